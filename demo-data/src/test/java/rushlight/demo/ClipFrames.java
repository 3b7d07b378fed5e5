package rushlight.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Draws the synthetic clip: dots on a field that move while a rep of one hand-written game is on. Writes raw frames
 * (320 x 180, 3 bytes a pixel in the order blue, green, red, 3 frames a second) for an encoder to read.
 */
final class ClipFrames {
    private static final int WIDTH = 160;
    private static final int HEIGHT = 90;
    private static final int SCALE = 2;
    private static final int RATE = 3;
    private static final int LINE = 40;
    private static final int STRIPE = 17;
    private static final String GAME = "Calder Mill at Harrow Vale";

    private ClipFrames() {}

    public static void main(String... args) throws IOException {
        List<Map<String, String>> reps = DemoFiles.rows(Path.of(args[0])).stream()
                .filter(row -> row.getOrDefault("game", "").equals(GAME))
                .toList();
        double length = seconds(reps.get(reps.size() - 1), "end") + 2;
        OutputStream frames = System.out;
        for (int frame = 0; frame < length * RATE; frame++) {
            frames.write(frame(reps, frame / (double) RATE));
        }
        frames.flush();
    }

    private static byte[] frame(List<Map<String, String>> reps, double at) {
        BufferedImage image = new BufferedImage(SCALE * WIDTH, SCALE * HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.scale(SCALE, SCALE);
        pen.setColor(new Color(0x24, 0x4a, 0x30));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(new Color(0x4d, 0x70, 0x58));
        for (int yards = LINE - 6 - 2 * STRIPE; yards < HEIGHT; yards += STRIPE) {
            pen.drawLine(0, yards, WIDTH, yards);
        }
        pen.setColor(Color.WHITE);
        pen.drawLine(0, LINE - 6, WIDTH, LINE - 6);
        reps.stream()
                .filter(rep -> seconds(rep, "start") <= at && at < seconds(rep, "end"))
                .findFirst()
                .ifPresent(rep -> draw(pen, rep, at - seconds(rep, "start")));
        pen.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    private static void draw(Graphics2D pen, Map<String, String> rep, double since) {
        boolean left = rep.getOrDefault("over", "").equals("left");
        boolean won = rep.getOrDefault("result", "").equals("won");
        double gone = Math.min(1, since / 4);
        for (int man = -2; man <= 2; man++) {
            boolean his = man == (left ? -2 : 2);
            dot(pen, Color.LIGHT_GRAY, WIDTH / 2.0 + man * 14, LINE + (his && gone > 0.25 ? 8 : 0));
        }
        dot(pen, Color.YELLOW, WIDTH / 2.0, LINE + 32);
        double side = left ? -1 : 1;
        double reach = won ? gone : Math.min(gone, 0.3);
        double width = 46 - 46 * Math.max(0, reach - 0.3) / 0.7 - 10 * Math.min(reach, 0.3) / 0.3;
        dot(pen, Color.ORANGE, WIDTH / 2.0 + side * width, LINE - 12 + 44 * reach);
    }

    private static void dot(Graphics2D pen, Color color, double x, double y) {
        pen.setColor(color);
        pen.fill(new Ellipse2D.Double(x - 3.5, y - 3.5, 7, 7));
    }

    private static double seconds(Map<String, String> rep, String column) {
        double seconds = 0;
        for (String part : rep.getOrDefault(column, "").split(":", -1)) {
            seconds = seconds * 60 + Double.parseDouble(part);
        }
        return seconds;
    }
}
