using System.Xml.Linq;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Architecture;

/// <summary>What the build must do on machines that are set up otherwise.</summary>
public sealed class BuildTests
{
    private static string File(params string[] parts) => Path.Combine([TestLaw.Repository, "src", .. parts]);

    [Fact]
    public void Packages_are_found_whether_or_not_their_folder_ends_in_a_slash()
    {
        string found = XDocument.Load(File("Chandlery.Paper", "InterFont.targets")).Descendants("InterFontAssembly").Single().Value;
        using var tool = new Tool();
        string project = tool.Write(
            "font.proj",
            System.Text.Encoding.UTF8.GetBytes(
                $"<Project><PropertyGroup><InterFontPackage>font</InterFontPackage><InterFontVersion>1</InterFontVersion><Found>{found}</Found></PropertyGroup></Project>"
            )
        );
        string In(string root) => tool.Run("dotnet", "msbuild", project, "-getProperty:Found", $"-p:NuGetPackageRoot={root}").Trim();
        Assert.StartsWith("/packages/font/1/", In("/packages/"), StringComparison.Ordinal);
        Assert.Equal(In("/packages/"), In("/packages"));
    }

    // With keys in the place of messages a maker would read 'IO_FileNotFound_FileName'.
    [Fact]
    public void Messages_of_the_runtime_are_published_as_words()
    {
        using var tool = new Tool();
        foreach (string[] way in new[] { new[] { "-p:PublishAot=true" }, ["-p:PublishSingleFile=true", "-p:SelfContained=true"] })
        {
            string keys = tool.Run(
                    "dotnet",
                    [
                        "msbuild",
                        File("Chandlery.Cli", "Chandlery.Cli.csproj"),
                        "-getProperty:UseSystemResourceKeys",
                        "-p:Configuration=Release",
                        .. way,
                    ]
                )
                .Trim();
            Assert.True(keys is "" or "false", keys);
        }
    }
}
