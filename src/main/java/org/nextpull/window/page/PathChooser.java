package org.nextpull.window.page;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;

/** Finds a file or a folder with the dialog of the toolkit, which looks into folders on threads of its own. */
public final class PathChooser {
    private final JFileChooser dialog;

    private PathChooser(JFileChooser dialog) {
        this.dialog = dialog;
    }

    /**
     * A dialog that is not shown yet.
     *
     * @param typed the path so far, where it begins to look
     * @param foldersOnly whether a folder is wanted
     */
    public static PathChooser from(String typed, boolean foldersOnly) {
        String wanted = typed.strip();
        File begin = new File(wanted.equals(".") ? "" : wanted).getAbsoluteFile();
        JFileChooser dialog = new JFileChooser();
        dialog.setFileSelectionMode(foldersOnly ? JFileChooser.DIRECTORIES_ONLY : JFileChooser.FILES_AND_DIRECTORIES);
        dialog.setDialogTitle(foldersOnly ? "Choose a folder" : "Choose a file");
        dialog.getAccessibleContext().setAccessibleName(dialog.getDialogTitle());
        if (begin.isDirectory()) {
            dialog.setCurrentDirectory(begin);
        } else {
            dialog.setCurrentDirectory(begin.getParentFile());
            dialog.setSelectedFile(begin);
        }
        return new PathChooser(dialog);
    }

    /** Shows it above a part of the window; the path that was chosen, or nothing when it was put away. */
    public Optional<String> choose(Component above) {
        int answer = dialog.showDialog(above, "Choose");
        return answer == JFileChooser.APPROVE_OPTION
                ? Optional.of(shortest(dialog.getSelectedFile().toPath()))
                : Optional.empty();
    }

    /** As somebody would type it who works in the present folder. */
    private static String shortest(Path chosen) {
        Path here = Path.of("").toAbsolutePath();
        return chosen.startsWith(here) && !chosen.equals(here)
                ? here.relativize(chosen).toString()
                : chosen.toString();
    }
}
