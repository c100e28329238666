using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;

namespace Chandlery.Benchmarks;

/// <summary>The benchmarks of single steps.</summary>
internal static class MicroBenchmarks
{
    /// <summary>Runs those that the library's own arguments choose.</summary>
    public static void Run(string[] args)
    {
        // In this process: a generated project would not find the repository's pinned packages.
        IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessNoEmitToolchain.Instance));
        BenchmarkSwitcher.FromTypes([typeof(ClassificationBenchmark), typeof(PaperBenchmark)]).Run(args, config);
    }
}
