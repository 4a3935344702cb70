@echo off
rem Starts yardloom. In a source tree it builds first if nothing was built yet.
setlocal
set "HERE=%~dp0"
set "HOMEDIR=%HERE%program\target\yardloom"
if exist "%HERE%..\lib" if not exist "%HERE%program" set "HOMEDIR=%HERE%.."
if exist "%HOMEDIR%\lib" goto start
where mvn >nul 2>nul || (echo yardloom: Maven ^(mvn^) is needed to build; install it first 1>&2 & exit /b 3)
echo yardloom: building, about a minute on first use 1>&2
if not exist "%HERE%program\target" mkdir "%HERE%program\target"
call mvn -q -f "%HERE%..\pom.xml" -DskipTests -Dmaven.source.skip -Dmaven.javadoc.skip package > "%HERE%program\target\build.log" 2>&1
if errorlevel 1 goto unbuilt
:start
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>nul
if errorlevel 1 goto nojava
rem A plan is drawn in seconds: the second compiler and a parallel collector cost more than they give.
set "QUICK=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
if "%~1"=="batch" set "QUICK="
if "%~1"=="watch" set "QUICK=-XX:+UseSerialGC"
"%JAVA%" -Xmx512m -Djava.awt.headless=true %QUICK% -cp "%HOMEDIR%\lib\*" yardloom.program.cli.Main %*
exit /b %errorlevel%
rem Outside of brackets, because a path such as "Program Files (x86)" would close them.
:unbuilt
echo yardloom: the build failed, see "%HERE%program\target\build.log"; the first build needs the network once 1>&2
exit /b 4
:nojava
echo yardloom: Java 17 or later is needed; install a JDK 1>&2
exit /b 3
