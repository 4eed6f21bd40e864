package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** Somebody of 5'-8", so that everybody sees how large the rest is; common practice, no source. */
final class Person {
  static final double HEIGHT_IN = 68;

  /** Half of the outline without the head, from the neck down: out from the middle, and up. */
  private static final double[][] HALF = {
    {1.6, 59.5},
    {2.2, 57.6},
    {5.5, 56.6},
    {8, 54.8},
    {8.9, 51.5},
    {9.6, 44},
    {10.3, 36},
    {10.4, 30.5},
    {9.6, 28.8},
    {8.4, 29.4},
    {8, 31.5},
    {7.6, 37},
    {6.9, 44},
    {6.1, 47.5},
    {6, 42},
    {6.6, 35},
    {6.3, 26},
    {5.5, 18},
    {4.8, 8},
    {4.6, 2.2},
    {5.6, 0.8},
    {5.6, 0},
    {1.6, 0},
    {1.3, 8},
    {1, 18},
    {0.5, 29}
  };

  private static final double HEAD_UP_IN = 63.3;
  private static final double HEAD_IN = 4.4;

  private Person() {}

  static void stand(Scene scene, double middleIn, double groundIn) {
    List<ScenePoint> corners = new ArrayList<>();
    for (double[] each : HALF) {
      corners.add(new ScenePoint(middleIn + each[0], groundIn + each[1]));
    }
    for (int i = HALF.length - 1; i >= 0; i--) {
      corners.add(new ScenePoint(middleIn - HALF[i][0], groundIn + HALF[i][1]));
    }
    scene.area(corners, Tone.PERSON, LineClass.NONE);
    scene.add(
        new Drawn.Round(
            new ScenePoint(middleIn, groundIn + HEAD_UP_IN), HEAD_IN, Tone.PERSON, LineClass.NONE));
  }
}
