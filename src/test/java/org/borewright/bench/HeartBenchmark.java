package org.borewright.bench;

import java.util.concurrent.TimeUnit;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Shelf;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HeartBenchmark {
    final TwinShop shop = new TwinShop();
    final Shelf shelf = shop.shelf();
    final FitTable fits = FitTable.of(shelf);
    final KitFinder kits = new KitFinder(shelf, new Offers(shop.offers));
    final MatchRequest request = shop.request(Condition.WORN, "standard", TwinShop.surveys("70.110", "70.020"));

    @Benchmark
    public Match match() {
        return Match.of(fits, kits, request);
    }
}
