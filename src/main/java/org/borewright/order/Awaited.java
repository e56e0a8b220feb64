package org.borewright.order;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What an order waits for of a number.
 *
 * @param number of a box or loose part
 * @param toCome how many
 * @param expectedOn the day they were to be here by when the order began to wait; empty where nobody knows
 */
public record Awaited(String number, int toCome, Optional<LocalDate> expectedOn) {}
