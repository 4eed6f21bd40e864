@echo off
rem Runs scantling from any folder. The class archive is used where it fits the running Java, and left alone where not.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -Xshare:auto -XX:SharedArchiveFile="%HOME_DIR%\lib\scantling.jsa" -Xlog:disable -Xlog:all=error:stderr -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%HOME_DIR%\lib\scantling-${project.version}.jar" org.scantling.cli.Main %*
exit /b %ERRORLEVEL%
