package org.borewright.storm;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The tables held against each other, by statements of their own and not by those of the service. */
final class Books {

    /** What may not be: each counts the rows that are wrong. */
    private static final Map<String, String> FAULTS = new LinkedHashMap<>();

    static {
        FAULTS.put("numbers oversold, or less than nothing", """
                select count(*) from stock where reserved < 0 or on_hand < 0 or reserved > on_hand""");
        FAULTS.put("numbers of which another count is put aside than orders hold", """
                select count(*) from stock s where s.reserved <>
                 (select coalesce(sum(r.put_aside), 0) from reservations r where r.number = s.number)""");
        FAULTS.put("parts of an accepted quote that are not held whole", """
                select count(*) from orders o
                 join quotes q on q.order_number = o.number and q.number = o.accepted_quote
                 join quote_parts p on p.quote = q.id
                 left join reservations r on r.order_number = o.number and r.number = p.number
                 where o.state = 'ACCEPTED' and coalesce(r.put_aside + r.to_come, 0) <> p.quantity""");
        FAULTS.put("parts held for an order that is not accepted", """
                select count(*) from reservations r
                 join orders o on o.number = r.order_number where o.state <> 'ACCEPTED'""");
        FAULTS.put("parts that lie free while an order waits for them", """
                select count(*) from reservations r
                 join stock s on s.number = r.number where r.to_come > 0 and s.on_hand > s.reserved""");
        FAULTS.put("orders with more or fewer lines in the journal than changes", """
                select count(*) from orders o where o.version <>
                 (select count(*) from journal j where j.order_number = o.number)""");
        FAULTS.put("orders with more or fewer quotes than lines that say so", """
                select count(*) from orders o where
                 (select count(*) from quotes q where q.order_number = o.number) <>
                 (select count(*) from journal j where j.order_number = o.number and j.did = 'quote')""");
        FAULTS.put("requests that were begun and not answered", """
                select count(*) from answered_requests where status = 0""");
    }

    private final Connection tables;

    Books(Connection tables) {
        this.tables = tables;
    }

    /** What is wrong, with how often; nothing where all holds. */
    Map<String, Long> faults() throws SQLException {
        Map<String, Long> found = new LinkedHashMap<>();
        for (Map.Entry<String, String> fault : FAULTS.entrySet()) {
            long rows = count(fault.getValue());
            if (rows > 0) {
                found.put(fault.getKey(), rows);
            }
        }
        if (!new Sealed(tables).holds()) {
            found.put("a journal that does not hold", 1L);
        }
        return found;
    }

    /** The orders in a state. */
    Set<Long> orders(String state) throws SQLException {
        Set<Long> found = new TreeSet<>();
        try (Statement statement = tables.createStatement();
                ResultSet row = statement.executeQuery("select number from orders where state = '" + state + "'")) {
            while (row.next()) {
                found.add(row.getLong(1));
            }
        }
        return found;
    }

    /** The number that a statement counts. */
    long count(String query) throws SQLException {
        try (Statement statement = tables.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
