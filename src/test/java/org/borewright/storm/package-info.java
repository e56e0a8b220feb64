/**
 * The packaged service in processes of its own, driven by many at once and killed in the middle: that no stock is sold twice, and that nothing
 * that was answered is lost. Short forms run in {@code mvn verify}; the long ones, named {@code …Trial}, print what they found.
 */
package org.borewright.storm;
