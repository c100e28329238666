using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Approved;

/// <summary>
/// All that is said about a mixture, as somebody read and approved it: classes, workings, sentences, label elements and
/// what was left off. A difference means that somebody must read again.
/// </summary>
public sealed class ApprovedLawTests
{
    /// <summary>The name of every file.</summary>
    public static TheoryData<string> Names() => [.. ApprovedFiles.All.Select(f => f.Name)];

    [Theory(DisplayName = "What is said is as approved")]
    [MemberData(nameof(Names))]
    public void What_is_said_is_as_approved(string name)
    {
        ApprovedFile file = ApprovedFiles.All.Single(f => f.Name == name);
        ApprovedPlace.Of(ApprovedFile.Folder, name).Holds(file.Write());
    }

    [Fact]
    public void No_file_is_left_that_nothing_writes() =>
        Assert.Empty(ApprovedPlace.Names(ApprovedFile.Folder).Except(ApprovedFiles.All.Select(f => f.Name)));
}
