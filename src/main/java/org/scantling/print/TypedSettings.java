package org.scantling.print;

import java.util.List;
import org.scantling.sayings.Sayings;

/** What {@code --set} takes, as it is typed: what has a blank in it in quotation marks. */
final class TypedSettings {
  private static final Sayings SAYINGS = Sayings.of("settings");

  private TypedSettings() {}

  static List<String> of(List<String> settings) {
    return settings.stream()
        .map(
            setting ->
                SAYINGS.say(
                    setting.matches("[\\w.=/-]+") ? "set" : "set.quoted", "setting", setting))
        .toList();
  }
}
