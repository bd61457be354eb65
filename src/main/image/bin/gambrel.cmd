@echo off
setlocal
rem Runs the program on the Java that lies beside it.
rem GAMBREL_JAVA: options for Java; -Xshare:auto gives it back its second compiler and its other collector for many years at once.
if not defined GAMBREL_JAVA set "GAMBREL_JAVA=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
"%~dp0..\runtime\bin\java" %GAMBREL_JAVA% -Djava.awt.headless=true -jar "%~dp0..\gambrel.jar" %*
exit /b %ERRORLEVEL%
