package org.scantling.intake;

import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.std.StdSerializer;

/** Writes a part that the structure does not have as {@code none}, so that nobody has to guess. */
final class NoneSerializer extends StdSerializer<Object> {
  NoneSerializer() {
    super(Object.class);
  }

  @Override
  public void serialize(Object value, JsonGenerator out, SerializationContext context) {
    out.writeString("none");
  }
}
