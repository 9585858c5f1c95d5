# Address and undefined-behaviour sanitizers over all tests.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SUMPWRIGHT_WINDOW ON CACHE BOOL "")
set(SUMPWRIGHT_TESTS ON CACHE BOOL "")
set(SUMPWRIGHT_SANITIZE address,undefined CACHE STRING "")
# Line numbers are all a report needs; less to compile.
set(CMAKE_CXX_FLAGS_DEBUG "-g1" CACHE STRING "")
