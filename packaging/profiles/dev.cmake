# Every day: optimised for debugging, warnings are errors, all tests.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SUMPWRIGHT_WINDOW ON CACHE BOOL "")
set(SUMPWRIGHT_TESTS ON CACHE BOOL "")
