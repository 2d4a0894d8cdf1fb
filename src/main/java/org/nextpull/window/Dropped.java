package org.nextpull.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;
import org.tinylog.Logger;

/** Takes files that are dropped onto the window. */
final class Dropped extends TransferHandler {
    private static final long serialVersionUID = 1;

    private final transient Consumer<List<String>> take;

    /**
     * The handler.
     *
     * @param take is given the paths of what was dropped
     */
    Dropped(Consumer<List<String>> take) {
        this.take = take;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            take.accept(files.stream().map(file -> ((File) file).getPath()).toList());
            return true;
        } catch (UnsupportedFlavorException | IOException lost) {
            Logger.warn("what was dropped could not be read: {}", lost.getMessage());
            return false;
        }
    }
}
