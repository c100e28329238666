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
        string now = file.Write();
        if (File.Exists(file.ApprovedPath) && File.ReadAllText(file.ApprovedPath) == now)
        {
            File.Delete(file.ReceivedPath);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(file.ReceivedPath)!);
        File.WriteAllText(file.ReceivedPath, now);
        Assert.Fail(
            $"What is said has changed. Read the difference between {file.ApprovedPath} and {Path.GetFileName(file.ReceivedPath)} "
                + $"beside it; to approve it, move the received file over the approved one: mv {file.ReceivedPath} {file.ApprovedPath}"
        );
    }

    [Fact]
    public void No_file_is_left_that_nothing_writes()
    {
        IEnumerable<string> there = Directory
            .EnumerateFiles(ApprovedFile.Folder, "*.txt", SearchOption.AllDirectories)
            .Where(path => !ApprovedFile.IsReceived(path));
        Assert.Empty(there.Except(ApprovedFiles.All.Select(f => f.ApprovedPath).Select(Path.GetFullPath)));
    }
}
