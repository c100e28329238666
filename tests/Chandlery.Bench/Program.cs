using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;
using Chandlery.Bench;

if (args is ["labels", var candle, var count, var output])
{
    LabelRun.Run(candle, int.Parse(count, CultureInfo.InvariantCulture), output);
    return;
}

// In this process: a generated project would not find the repository's pinned packages.
IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessNoEmitToolchain.Instance));
BenchmarkSwitcher.FromTypes([typeof(ClassificationBenchmark)]).Run(args, config);
