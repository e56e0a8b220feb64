package org.borewright.fit.shape;

import org.borewright.measure.Limits;

/**
 * A hole that carries the wrist pin, in piston or rod.
 *
 * @param bore its diameter
 * @param fit the clearance asked for, hole less pin; below zero for a press
 */
public record PinSeat(Limits bore, Limits fit) {}
