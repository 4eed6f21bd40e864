package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

/**
 * The build cannot see what picocli puts into the field of an option or a parameter, so here the
 * marks of these fields are held against its model.
 */
class MaybeAbsentOptionsTest {
  @Test
  void a_field_is_nullable_just_where_the_command_line_may_leave_it_null() {
    List<Field> fields = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    CommandLine program = Main.commandLine(silent(), silent());
    for (CommandLine command : program.getSubcommands().values()) {
      for (ArgSpec argument : command.getCommandSpec().args()) {
        if (argument.userObject() instanceof Field field
            && field.getDeclaringClass().getPackage() == Main.class.getPackage()) {
          fields.add(field);
          if (marked(field) != maybeNull(argument, field)) {
            wrong.add(field.getDeclaringClass().getSimpleName() + "." + field.getName());
          }
        }
      }
    }

    assertThat(wrong).isEmpty();
    assertThat(fields).anyMatch(MaybeAbsentOptionsTest::marked).anyMatch(each -> !marked(each));
  }

  private static boolean marked(Field field) {
    return field.getAnnotatedType().isAnnotationPresent(Nullable.class);
  }

  private static boolean maybeNull(ArgSpec argument, Field field) {
    return !field.getType().isPrimitive()
        && !argument.required()
        && argument.defaultValue() == null
        && argument.initialValue() == null;
  }

  private static PrintWriter silent() {
    return new PrintWriter(Writer.nullWriter());
  }
}
