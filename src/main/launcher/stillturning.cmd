@echo off
rem Starts Stillturning with what suits the command; see the file without .cmd beside this one.
setlocal
set "FLAGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xms64m"
for %%w in (%*) do (
  for %%l in (run-up explore suggest --pairs --latent --every-phase --guesses --ranges --propose) do (
    if "%%~w"=="%%l" set "FLAGS="
  )
)
rem a window stays open for hours: what it needed for a moment goes back to the system
if "%~1"=="desktop" set "FLAGS=-XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=30 -XX:G1PeriodicGCInterval=20000"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem a release brings a Java of its own
if exist "%~dp0runtime\bin\java.exe" set "JAVA=%~dp0runtime\bin\java"
"%JAVA%" %FLAGS% -jar "%~dp0stillturning.jar" %*
