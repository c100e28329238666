using System.Globalization;
using Chandlery.Benchmarks;

if (args is ["labels", var candle, var count, var output])
{
    LabelRun.Run(candle, int.Parse(count, CultureInfo.InvariantCulture), output);
    return;
}

if (args is ["label-kit", var printed, var kit])
{
    LabelRun.WriteKit(printed, kit);
    return;
}

if (args is ["make-catalogue", var demo, var candles, var target, .. [] or ["none-alike"]])
{
    CatalogueBenchmark.Make(demo, int.Parse(candles, CultureInfo.InvariantCulture), target, noneAlike: args is [.., "none-alike"]);
    return;
}

if (args is ["catalogue", var folder])
{
    CatalogueBenchmark.Run(folder);
    return;
}

if (args is ["page", var opened, var typed])
{
    await PageRun.Run(opened, typed);
    return;
}

if (args is ["register-make", var entered, var entries, var made, .. var small])
{
    RegisterRun.Make(entered, int.Parse(entries, CultureInfo.InvariantCulture), made, small is ["small"]);
    return;
}

if (args is ["register-measure", var measured])
{
    RegisterRun.Measure(measured);
    return;
}

if (args is ["skia", var drawn, var pages])
{
    SkiaRun.Run(drawn, int.Parse(pages, CultureInfo.InvariantCulture));
    return;
}

#if !AHEAD_OF_TIME
MicroBenchmarks.Run(args);
#endif
