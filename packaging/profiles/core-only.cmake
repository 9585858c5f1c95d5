# The core, its tests and the command line on a machine without Qt: looking for Qt is an error here.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SUMPWRIGHT_WINDOW OFF CACHE BOOL "")
set(SUMPWRIGHT_TESTS ON CACHE BOOL "")
set(CMAKE_DISABLE_FIND_PACKAGE_Qt6 ON CACHE BOOL "")
