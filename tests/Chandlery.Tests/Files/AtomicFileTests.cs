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
}
