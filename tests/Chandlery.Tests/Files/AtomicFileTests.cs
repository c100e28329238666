using Chandlery.Files;

namespace Chandlery.Tests.Files;

/// <summary>What saving leaves as it was.</summary>
public sealed class AtomicFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-atomic-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_file_that_its_owner_keeps_to_himself_stays_so()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string path = Path.Combine(folder, "maker.yaml");
        File.WriteAllText(path, "old");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        AtomicFile.Write(path, "new");
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        Assert.Single(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void What_a_killed_program_left_goes_with_the_next_writing()
    {
        string path = Path.Combine(folder, "maker.yaml");
        string old = Path.Combine(folder, ".maker.yaml.0123456789abcdef0123456789abcdef.tmp");
        string young = Path.Combine(folder, ".maker.yaml.fedcba9876543210fedcba9876543210.tmp");
        string other = Path.Combine(folder, ".other.yaml.0123456789abcdef0123456789abcdef.tmp");
        foreach (string left in new[] { old, young, other })
        {
            File.WriteAllText(left, "half");
        }

        File.SetLastWriteTimeUtc(old, DateTime.UtcNow.AddHours(-1));
        File.SetLastWriteTimeUtc(other, DateTime.UtcNow.AddHours(-1));
        AtomicFile.Write(path, "new");
        Assert.False(File.Exists(old));
        Assert.True(File.Exists(young), "somebody may be writing it");
        Assert.True(File.Exists(other), "it is another file's");
    }
}
