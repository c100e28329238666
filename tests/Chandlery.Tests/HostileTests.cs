using Chandlery.Hostile;
using Chandlery.Tests.Support;

namespace Chandlery.Tests;

/// <summary>The bounded share of the fuzzing that a nightly run does a million times: see DEVELOPERS.md.</summary>
public sealed class HostileTests
{
    private static readonly Lazy<Fuzzer> Shared = new(() => new Fuzzer());

    [Theory]
    [InlineData("declaration", 3000)]
    [InlineData("sheet text", 1500)]
    [InlineData("sheet page", 60)]
    [InlineData("csv", 800)]
    [InlineData("page edit", 800)]
    [InlineData("template", 150)]
    [InlineData("pdf", 40)]
    public void Bent_input_never_crashes(string kind, int cases)
    {
        var wrong = new System.Collections.Concurrent.ConcurrentBag<string>();
        Parallel.For(
            0,
            cases,
            i =>
            {
                string what = Shared.Value.Run(kind, i);
                if (what.Length > 0)
                {
                    wrong.Add(what);
                }
            }
        );
        Assert.Empty(wrong);
    }

    [Fact]
    public void Killed_commands_leave_whole_files_or_none() =>
        Assert.Empty(KillLoop.Run(Path.Combine(AppContext.BaseDirectory, "chandlery.dll"), 1));

    [NeedsOwnDisksFact]
    public void A_full_or_read_only_disk_loses_nothing() =>
        Assert.Empty(BadDisks.Run(Path.Combine(AppContext.BaseDirectory, "chandlery.dll"), "label", "draft", "register"));
}
