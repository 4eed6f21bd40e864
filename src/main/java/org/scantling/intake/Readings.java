package org.scantling.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a file said, by path: numbers in the units used inside, words, and the original texts. */
final class Readings {
  private final Map<String, Double> numbers = new HashMap<>();
  private final Map<String, String> words = new HashMap<>();
  private final Map<String, Integer> sizes = new HashMap<>();
  private final SortedMap<String, String> originals = new TreeMap<>();
  private final List<String> absent = new ArrayList<>();

  void putNumber(String path, double amount, String original) {
    putNumber(path, amount);
    putOriginal(path, original);
  }

  /** A number that is kept under another path than the key has in the file. */
  void putNumber(String path, double amount) {
    numbers.put(path, amount);
  }

  void putOriginal(String path, String original) {
    originals.put(path, original);
  }

  void putWord(String path, String word) {
    words.put(path, word);
    originals.put(path, word);
  }

  /** A word that was read as another, which has to be told. */
  void putReadAs(String path, String written) {
    absent.add(path + "=" + written);
  }

  void putSize(String path, int size) {
    sizes.put(path, size);
  }

  void putAbsent(String path) {
    absent.add(path);
  }

  double number(String path) {
    return maybeNumber(path).orElseThrow(() -> new IllegalStateException("no number at " + path));
  }

  int count(String path) {
    return (int) Math.round(number(path));
  }

  OptionalInt maybeCount(String path) {
    return numbers.containsKey(path) ? OptionalInt.of(count(path)) : OptionalInt.empty();
  }

  /** The numbers of a list; none where the file has no such list, or one of them was refused. */
  List<Double> numbers(String path) {
    List<Double> all = new ArrayList<>();
    for (int place = 0; place < size(path); place++) {
      maybeNumber(path + "[" + place + "]").ifPresent(all::add);
    }
    return all.size() == size(path) ? all : List.of();
  }

  String word(String path) {
    return maybeWord(path).orElseThrow(() -> new IllegalStateException("no word at " + path));
  }

  OptionalDouble maybeNumber(String path) {
    Double amount = numbers.get(path);
    return amount == null ? OptionalDouble.empty() : OptionalDouble.of(amount);
  }

  Optional<String> maybeWord(String path) {
    return Optional.ofNullable(words.get(path));
  }

  /** Items of a list; none where the file has no such list. */
  int size(String path) {
    return sizes.getOrDefault(path, 0);
  }

  boolean hasGroup(String path) {
    String start = path + ".";
    return originals.keySet().stream().anyMatch(key -> key.startsWith(start));
  }

  /** What stands in the file where a number or a word was read. */
  String original(String path) {
    return Optional.ofNullable(originals.get(path))
        .orElseThrow(() -> new IllegalStateException("nothing was read at " + path));
  }

  SortedMap<String, String> originals() {
    return originals;
  }

  List<String> absent() {
    return absent;
  }
}
