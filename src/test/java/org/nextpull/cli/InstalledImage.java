package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.AutoComplete;
import picocli.CommandLine;

/**
 * Makes the program with its own Java in one folder: launcher, archive of loaded classes, shell completion, manual page. Run by the
 * profile {@code image}.
 */
public final class InstalledImage {
    private static final String MODULES =
            "java.desktop,java.management,java.naming,java.prefs,java.sql,jdk.unsupported";
    /**
     * What the archive is made for. Not the sheet of a day: with its charts the archive would be half as large again, and Java goes over
     * the whole of it at each start.
     */
    private static final List<List<String>> SAMPLES = List.of(
            List.of("advise", "--plan", "sweep-plans/hillclimb-e10-day.toml", "sample-logs/hillclimb-e10-day.csv"),
            List.of("replay", "--plan", "sweep-plans/hillclimb-e10-day.toml", "sample-logs/hillclimb-e10-day.csv"),
            List.of(
                    "compare",
                    "--plan",
                    "sweep-plans/hillclimb-manifold.toml",
                    "sample-logs/hillclimb-manifold.csv",
                    "--against",
                    "before"));
    /**
     * The first compiler alone: most runs end before what the second one makes has paid. And a collector that goes over the same few megabytes
     * again, where the usual one takes hundreds from the system to read a long log.
     */
    private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmn24m");

    /** Memory by two megabytes, where Linux has that to give: taking it page by page is a good part of a short run. */
    private static final String LARGE_PAGES = "-XX:+UseTransparentHugePages";

    private final Path jar;
    private final Path folder;
    private final Path image;

    private InstalledImage(Path jar, Path folder) {
        this.jar = jar;
        this.folder = folder;
        this.image = folder.resolve("nextpull");
    }

    /**
     * Makes it.
     *
     * @param args the jar, and the folder that the image comes into
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        InstalledImage made =
                new InstalledImage(Path.of(args[0]), Path.of(args[1]).toAbsolutePath());
        made.pack();
        if (System.getProperty("os.name").startsWith("Linux")) {
            made.launch();
        }
        made.archive();
        made.describe();
        System.out.println(made.image.resolve("bin/nextpull"));
    }

    private void pack() throws IOException, InterruptedException {
        if (Files.exists(image)) {
            throw new IOException(image + " exists; remove it first");
        }
        Path input = Files.createTempDirectory("nextpull-image");
        Files.copy(jar, input.resolve("nextpull.jar"));
        List<String> line = new ArrayList<>(List.of(tool("jpackage"), "--type", "app-image", "--name", "nextpull"));
        line.addAll(List.of("--input", input.toString(), "--dest", folder.toString()));
        line.addAll(List.of("--main-jar", "nextpull.jar", "--main-class", Main.class.getName()));
        line.addAll(List.of("--add-modules", MODULES, "--jlink-options", "--no-man-pages --no-header-files"));
        line.addAll(List.of("--java-options", "-XX:SharedArchiveFile=$APPDIR/nextpull.jsa"));
        QUICK.forEach(option -> line.addAll(List.of("--java-options", option)));
        run(line);
        Files.delete(input.resolve("nextpull.jar"));
        Files.delete(input);
    }

    /**
     * A launcher in place of the packager's own, which on Linux asks the system at each start which package it came with, and takes as long for
     * that as Java for its start.
     */
    private void launch() throws IOException {
        Path launcher = image.resolve("bin/nextpull");
        Files.writeString(
                launcher,
                String.join(
                        "\n",
                        "#!/bin/sh",
                        "self=$(readlink -f \"$0\")",
                        "home=${self%/bin/*}",
                        "exec \"$home/lib/runtime/bin/java\" -XX:SharedArchiveFile=\"$home/lib/app/nextpull.jsa\" "
                                + String.join(" ", QUICK) + " " + LARGE_PAGES + " -cp \"$home/lib/app/nextpull.jar\" "
                                + Main.class.getName() + " \"$@\"",
                        ""));
    }

    /**
     * The archive of the classes that an advice, a replay and a comparison load. It is static and made from a list, since a dynamic one
     * ends Java 17 by a fault: lambdas of interfaces whose class files are older than Java 6, as those of two libraries are, cannot be
     * archived. They are left out here.
     */
    private void archive() throws IOException, InterruptedException {
        Path app = image.resolve("lib/app");
        Path classes = Files.createTempFile("nextpull-classes", ".txt");
        Set<String> loaded = new LinkedHashSet<>();
        String archive = "-XX:SharedArchiveFile=" + app.resolve("nextpull.jsa");
        List<String> program = new ArrayList<>(QUICK);
        program.addAll(List.of("-cp", app.resolve("nextpull.jar").toString()));
        for (List<String> sample : SAMPLES) {
            run(java(program, List.of("-Xshare:off", "-XX:DumpLoadedClassList=" + classes), sample));
            loaded.addAll(Files.readAllLines(classes));
        }
        List<String> kept = loaded.stream()
                .filter(line -> !line.startsWith("@lambda-proxy")
                        || !(line.contains("picocli/") || line.contains("org/apache/commons/math3/")))
                .toList();
        Files.write(classes, kept);
        run(java(
                program,
                List.of(
                        "-Xshare:dump",
                        "-Xlog:cds=error,cds+heap=error",
                        "-XX:SharedClassListFile=" + classes,
                        archive),
                List.of()));
        // fails where the archive does not fit
        run(java(program, List.of("-Xshare:on", archive), List.of("--version")));
        Files.delete(classes);
    }

    private List<String> java(List<String> program, List<String> options, List<String> words) {
        List<String> line = new ArrayList<>();
        line.add(image.resolve("lib/runtime/bin/java").toString());
        line.addAll(options);
        line.addAll(program);
        line.add(Main.class.getName());
        line.addAll(words);
        return line;
    }

    private void describe() throws IOException {
        PrintWriter nowhere = new PrintWriter(PrintWriter.nullWriter());
        CommandLine program =
                Program.commandLine(new Console(nowhere, nowhere, new java.io.BufferedReader(Reader.nullReader())));
        write("share/bash-completion/completions/nextpull", AutoComplete.bash("nextpull", program));
        write("share/man/man1/nextpull.1", ManPage.of(program));
    }

    private void write(String name, String text) throws IOException {
        Path file = image.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static String tool(String name) {
        return Path.of(System.getProperty("java.home"), "bin", name).toString();
    }

    private static void run(List<String> line) throws IOException, InterruptedException {
        int status = new ProcessBuilder(line)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start()
                .waitFor();
        if (status != 0) {
            throw new IOException(line.get(0) + " ended with " + status + ": " + String.join(" ", line));
        }
    }
}
