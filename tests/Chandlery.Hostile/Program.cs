using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Chandlery.Hostile;

// fuzz COUNT [SEED [KIND]]: that many bent inputs, of all kinds or of one. kill PROGRAM ROUNDS: kills every writing command in the middle.
// guided TARGET: serves a fuzzer that watches the branches (tests/fuzz-guided.sh).
// disk PROGRAM: gives every writing command full, small and read-only disks.
if (args is ["kill", var program, var rounds])
{
    IReadOnlyList<string> half = KillLoop.Run(program, int.Parse(rounds, CultureInfo.InvariantCulture));
    Console.WriteLine(half.Count == 0 ? "nothing half-written" : string.Join('\n', half));
    return half.Count == 0 ? 0 : 1;
}

if (args is ["guided", var target])
{
    GuidedFuzz.Run(target);
    return 0;
}

if (args is ["disk", var writer])
{
    IReadOnlyList<string> lost = BadDisks.Run(writer);
    Console.WriteLine(lost.Count == 0 ? "nothing half-written, nothing lost" : string.Join('\n', lost));
    return lost.Count == 0 ? 0 : 1;
}

if (args is not ["fuzz", var countText, ..])
{
    Console.Error.WriteLine("fuzz COUNT [SEED [KIND]], kill PROGRAM ROUNDS, or disk PROGRAM");
    return 2;
}

int count = int.Parse(countText, CultureInfo.InvariantCulture);
int seed = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 1;
var fuzzer = new Fuzzer();
var wrong = new ConcurrentBag<string>();
int done = 0;
var clock = Stopwatch.StartNew();
foreach ((string kind, int share) in Fuzzer.Kinds)
{
    if (args.Length > 3 && args[3] != kind)
    {
        continue;
    }

    int cases = args.Length > 3 ? count : (int)((long)count * share / 1000);
    long started = clock.ElapsedMilliseconds;
    Parallel.For(
        0,
        cases,
        i =>
        {
            string what = fuzzer.Run(kind, unchecked((seed * 1_000_003) + i));
            if (what.Length > 0)
            {
                wrong.Add(what);
            }

            Interlocked.Increment(ref done);
        }
    );
    Console.WriteLine($"{kind}: {cases} cases in {(clock.ElapsedMilliseconds - started) / 1000.0:0.0} s");
}

foreach (string what in wrong.Take(20))
{
    Console.WriteLine(what);
}

Console.WriteLine(
    $"{done} cases, {wrong.Count} wrong, {clock.Elapsed.TotalSeconds:0} s, peak {Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000} MB"
);
return wrong.IsEmpty ? 0 : 1;
