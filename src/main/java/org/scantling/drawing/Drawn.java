package org.scantling.drawing;

import java.util.List;

/** One thing in a view, in inches of the structure. */
sealed interface Drawn {

  record Line(ScenePoint from, ScenePoint to, LineClass line) implements Drawn {}

  /**
   * An area with its edge.
   *
   * @param mark of the piece that it is, or nothing
   */
  record Outline(List<ScenePoint> corners, Tone tone, LineClass line, String mark)
      implements Drawn {
    public Outline {
      corners = List.copyOf(corners);
    }

    Outline(List<ScenePoint> corners, Tone tone, LineClass line) {
      this(corners, tone, line, "");
    }
  }

  record Round(ScenePoint middle, double radiusIn, Tone tone, LineClass line) implements Drawn {}

  /**
   * Timber seen on its end, with the thin diagonals that say so.
   *
   * @param corners four of them, round
   * @param mark of the piece that it is, or nothing
   */
  record EndGrain(List<ScenePoint> corners, Tone tone, LineClass line, String mark)
      implements Drawn {
    public EndGrain {
      corners = List.copyOf(corners);
    }
  }

  /**
   * A chain of dimensions beside the drawing.
   *
   * @param tier 0 for the one nearest to what is drawn
   * @param stops what it measures between, in order
   * @param figures one between each stop and the next
   */
  record Dimension(Side side, int tier, List<ScenePoint> stops, List<Figure> figures)
      implements Drawn {
    public Dimension {
      stops = List.copyOf(stops);
      figures = List.copyOf(figures);
      if (figures.size() != stops.size() - 1) {
        throw new IllegalArgumentException(
            figures.size() + " figures at " + stops.size() + " stops");
      }
    }
  }

  /** A dimension within the drawing, from face to face. */
  record Inner(ScenePoint from, ScenePoint to, Figure figure) implements Drawn {}

  /** Distances that are all measured from one end, each written along its own witness line. */
  record Running(Side side, int tier, List<ScenePoint> stops, List<Figure> figures)
      implements Drawn {
    public Running {
      stops = List.copyOf(stops);
      figures = List.copyOf(figures);
    }
  }

  /**
   * A line between two places with its length written in it.
   *
   * @param along shares of its length where the figure may stand, the best first
   */
  record Measured(ScenePoint from, ScenePoint to, LineClass line, Figure figure, List<Double> along)
      implements Drawn {
    public Measured {
      along = List.copyOf(along);
    }
  }

  /**
   * The number of a dimension.
   *
   * @param words as it is printed
   * @param of what it measures, such as {@code A1 A2}
   * @param lengthIn the same in inches
   */
  record Figure(String words, String of, double lengthIn) {}

  /** A word at a place, wherever of several there is room for it. */
  record Note(String words, Lettering lettering, List<Spot> spots) implements Drawn {
    public Note {
      spots = List.copyOf(spots);
    }
  }

  /** Where a word may stand, off a place of the structure. */
  record Spot(ScenePoint at, double rightPx, double downPx, Anchor anchor) {}
}
