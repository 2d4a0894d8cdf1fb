package org.nextpull.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.SwingLook;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.AlarmPanel;
import org.nextpull.window.page.AlarmSound;
import org.nextpull.window.page.Banners;
import org.nextpull.window.page.CautionsPanel;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.KeyList;
import org.nextpull.window.page.Menus;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.PageSwitch;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.Signals;

/** The frame: banners above the pages, the foot below them; cautions first, and the list of keys when it is asked for. */
final class MainFrame implements Signals {
    private static final String CAUTIONS = "cautions";
    private static final String KEYS = "keys";
    private static final String ALARM = "alarm";
    private static final String PAGES = "pages";

    private final JFrame frame = new JFrame("nextpull");
    private final CardLayout cards = new CardLayout();
    private final JPanel root = new JPanel(cards);
    private final JPanel middle = new JPanel(new BorderLayout());
    private final Banners banners = new Banners();
    private final PageSwitch pages = new PageSwitch();
    private final FootBar foot = new FootBar();
    private final CautionsPanel cautions = new CautionsPanel(this::begin);
    private final KeyList keyList = new KeyList(this::hideKeys);
    private final AlarmPanel alarm = new AlarmPanel(this::hideKeys);
    private final Menus menus = new Menus(this::current);
    private final List<Styled> styled = List.of(banners, pages, foot, cautions, keyList, alarm, menus);
    private final List<KeyCommand> more = new ArrayList<>();
    private final AlarmSound sound;
    private volatile boolean silent;
    private Look look;
    private TypeScale scale = TypeScale.usual();
    private Skin skin;
    private boolean begun;
    private Runnable onBegin = () -> {};
    private Supplier<Optional<String>> onEnd = Optional::empty;

    MainFrame(Look look, AlarmSound sound) {
        this.look = look;
        this.skin = Skin.of(look);
        this.sound = sound;
        middle.add(banners, BorderLayout.NORTH);
        middle.add(pages, BorderLayout.CENTER);
        middle.add(foot, BorderLayout.SOUTH);
        root.add(cautions, CAUTIONS);
        root.add(middle, PAGES);
        root.add(keyList, KEYS);
        root.add(alarm, ALARM);
        frame.setContentPane(root);
        frame.setJMenuBar(menus.bar());
        frame.setIconImages(SwingLook.images());
        menus.popUpIn(middle);
        menus.bar().setVisible(false);
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                end();
            }
        });
        frame.setMinimumSize(new Dimension(800, 500));
        root.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                restyle(false);
            }
        });
    }

    FootBar foot() {
        return foot;
    }

    @Override
    public void urgent(List<String> sentences) {
        EventQueue.invokeLater(() -> banners.say(sentences));
    }

    @Override
    public void alarm(Signals.AlarmSign sign) {
        sound.sound(!silent && sign.phase() == Signals.AlarmSign.Phase.ACT);
        EventQueue.invokeLater(() -> {
            if (sign.phase() != Signals.AlarmSign.Phase.NONE) {
                alarm.show(sign);
                cards.show(root, ALARM);
                alarm.requestFocusInWindow();
            } else if (alarm.isVisible()) {
                hideKeys();
            }
        });
    }

    @Override
    public void changed() {
        if (!silent) {
            sound.chime();
        }
    }

    /** The sound is turned off after a question, and on again without one. */
    private void soundOnOrOff() {
        if (silent) {
            silent = false;
            foot.say("Alarm sound on.");
        } else {
            foot.ask(Question.whether("Turn the alarm sound OFF? An alarm is then only seen.", () -> {
                silent = true;
                sound.sound(false);
                foot.say("Alarm sound OFF. Ctrl M: on again.");
            }));
        }
    }

    JPanel root() {
        return root;
    }

    JFrame frame() {
        return frame;
    }

    Page current() {
        return pages.current();
    }

    Look look() {
        return look;
    }

    /** One more key of the window. */
    void add(KeyCommand key) {
        more.add(key);
    }

    void add(Page page) {
        pages.add(page);
    }

    /** Shows a page, counted from 0. */
    void show(int page) {
        pages.show(page);
    }

    /** Puts a page in the place of another and shows it. */
    void replace(int place, Page page) {
        pages.replace(place, page);
        page.style(skin, scale);
        page.units(look.units());
        pages.show(place);
    }

    /** What is done once the cautions were read. */
    void whenBegun(Runnable begin) {
        onBegin = begin;
    }

    /** What would be lost if the window were closed now, as a question; empty while nothing would be. */
    void beforeEnd(Supplier<Optional<String>> lost) {
        onEnd = lost;
    }

    /** Closes the window, after a question where something would be lost. */
    private void end() {
        Optional<String> lost = begun ? onEnd.get() : Optional.empty();
        if (lost.isEmpty()) {
            frame.dispose();
            return;
        }
        cards.show(root, PAGES);
        foot.ask(Question.whether(lost.get(), frame::dispose));
    }

    /** Binds the keys and shows the frame, cautions first. */
    void open(Dimension size) {
        keys().forEach(key -> key.bind(middle));
        keyList.list(all());
        menus.show(keys());
        pages.onShow(page -> {
            foot.putAway();
            foot.say("");
            foot.hint(page.hint());
            menus.show(keys());
        });
        pages.units(look.units());
        root.setPreferredSize(size);
        SwingLook.dress(look);
        frame.pack();
        restyle(true);
        frame.setVisible(true);
        cautions.focus();
    }

    private List<KeyCommand> all() {
        return Stream.concat(pages.current().keys().stream(), keys().stream()).toList();
    }

    List<KeyCommand> keys() {
        List<KeyCommand> keys = new ArrayList<>(pages.keys());
        keys.addAll(more);
        keys.add(KeyCommand.of("U", "U", "metric or US units", () -> change(look.otherUnits())));
        keys.add(KeyCommand.of("D", "D", "light or dark", () -> change(look.otherGround())));
        keys.add(KeyCommand.of("G", "G", "normal or larger type", () -> change(look.otherType())));
        keys.add(KeyCommand.of("ctrl M", "Ctrl M", "alarm sound off (asks first) or on", this::soundOnOrOff));
        keys.add(KeyCommand.of("F11", "F11", "the whole screen, or a window", this::wholeScreen));
        keys.add(new KeyCommand(
                List.of("F1", "shift SLASH", "typed ?"), "F1 or ?", "this list of keys", this::showKeys));
        keys.add(KeyCommand.of("ctrl Q", "Ctrl Q", "close the window", this::end));
        return keys;
    }

    private void begin() {
        cards.show(root, PAGES);
        pages.show(0);
        if (!begun) {
            begun = true;
            menus.bar().setVisible(true);
            onBegin.run();
        }
    }

    private void showKeys() {
        keyList.list(all());
        keyList.style(skin, scale);
        cards.show(root, KEYS);
        keyList.requestFocusInWindow();
    }

    private void hideKeys() {
        cards.show(root, PAGES);
        if (foot.isAsking()) {
            foot.focus();
        } else {
            pages.current().focus();
        }
    }

    private void wholeScreen() {
        boolean whole = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        frame.setExtendedState(whole ? Frame.NORMAL : Frame.MAXIMIZED_BOTH);
    }

    /** Shows the window in another look. */
    void change(Look newLook) {
        boolean ground = newLook.dark() != look.dark();
        boolean units = newLook.units() != look.units();
        look = newLook;
        if (ground) {
            SwingLook.dress(look);
        }
        restyle(true);
        if (units) {
            pages.units(look.units());
        }
    }

    /** Sets colours and sizes anew when the size of the window or the look asks for it. */
    private void restyle(boolean anew) {
        TypeScale wanted = TypeScale.of(Math.max(1, root.getWidth()), Math.max(1, root.getHeight()), look);
        if (!anew && scale.isLike(wanted)) {
            return;
        }
        scale = wanted;
        skin = Skin.of(look);
        UIManager.put("defaultFont", wanted.plain(13));
        root.setBackground(skin.ground());
        middle.setBackground(skin.ground());
        styled.forEach(part -> part.style(skin, scale));
        root.revalidate();
        root.repaint();
    }
}
