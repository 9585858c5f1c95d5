# Thread sanitizer over the engine. Without the window: Qt itself is not built for it and reports what is no fault.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SUMPWRIGHT_WINDOW OFF CACHE BOOL "")
set(SUMPWRIGHT_TESTS ON CACHE BOOL "")
set(SUMPWRIGHT_SANITIZE thread CACHE STRING "")
# Line numbers are all a report needs; less to compile.
set(CMAKE_CXX_FLAGS_DEBUG "-g1" CACHE STRING "")
