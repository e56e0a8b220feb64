/** On which database a test run works: H2 in memory, or a real PostgreSQL server that starts and ends with it. */
package org.borewright.database;
