package org.nextpull.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of the command line, in the macros of man(7), from the same specification as its help. */
final class ManPage {
    private final List<String> lines = new ArrayList<>();

    private ManPage() {}

    static String of(CommandLine program) {
        ManPage page = new ManPage();
        CommandSpec spec = program.getCommandSpec();
        page.macro(".TH " + spec.name().toUpperCase(java.util.Locale.ROOT) + " 1");
        page.macro(".SH NAME");
        page.text(spec.name() + " - what to set for the next pull on the dyno, or stop, and why");
        page.macro(".SH SYNOPSIS");
        page.text(spec.name() + " COMMAND [OPTION...] [LOG...]");
        page.macro(".SH DESCRIPTION");
        Arrays.stream(spec.usageMessage().description()).forEach(page::paragraph);
        page.macro(".SH COMMANDS");
        program.getSubcommands().values().forEach(page::command);
        page.macro(".SH EXIT STATUS");
        page.text("0 done; 1 the input could not be used, some files failed or the output could not be written; "
                + "2 wrong usage; 3 a fault of the program; 130 interrupted.");
        return page.lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private void command(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        macro(".SS " + escaped(spec.qualifiedName()));
        Arrays.stream(spec.usageMessage().description()).forEach(this::paragraph);
        for (PositionalParamSpec place : spec.positionalParameters()) {
            entry(place.paramLabel(), place.description());
        }
        for (OptionSpec option : spec.options()) {
            String value = option.arity().max() > 0 ? " " + option.paramLabel() : "";
            if (!option.hidden() && !option.usageHelp() && !option.versionHelp()) {
                entry(String.join(", ", option.names()) + value, option.description());
            }
        }
        command.getSubcommands().values().forEach(this::command);
    }

    private void entry(String name, String... description) {
        macro(".TP");
        macro(".B " + escaped(name));
        text(String.join(" ", description));
    }

    private void paragraph(String text) {
        macro(".PP");
        text(text);
    }

    private void macro(String line) {
        lines.add(line);
    }

    private void text(String text) {
        String plain = escaped(text.replace("%n", " ").replace("%%", "%").strip());
        // a line that begins with a dot or an apostrophe is a macro
        lines.add(plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain);
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-");
    }
}
