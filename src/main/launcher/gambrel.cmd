@echo off
setlocal
rem Runs the program on the Java that lies beside it, else on that of JAVA_HOME, else of PATH.
rem GAMBREL_JAVA: options for Java; -Xshare:auto gives it back its second compiler and its other collector for many years at once.
if not defined GAMBREL_JAVA set "GAMBREL_JAVA=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:MetaspaceSize=96m"
set "GAMBREL_COMMAND=%~0"
set "HERE=%~dp0"
if not exist "%HERE%gambrel.jar" set "HERE=%~dp0..\"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if exist "%HERE%runtime\bin\java.exe" set "JAVA=%HERE%runtime\bin\java"
"%JAVA%" %GAMBREL_JAVA% -Djava.awt.headless=true -jar "%HERE%gambrel.jar" %*
exit /b %ERRORLEVEL%
