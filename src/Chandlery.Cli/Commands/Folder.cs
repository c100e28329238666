using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Opens law and folder for commands that go on when some declarations are wrong.</summary>
internal sealed record Folder(IReadOnlyDictionary<string, string> Data, Lawbook Lawbook, DeclarationFolder Declarations)
{
    /// <summary>The folder; null with problems when law or path cannot be read at all.</summary>
    public static Folder? Open(string path, string? dataFolder, Problems problems) =>
        OpenLaw(path, dataFolder, problems, out IReadOnlyDictionary<string, string> data) is { } lawbook
            ? new Folder(data, lawbook, DeclarationFolder.Open(path, lawbook.Vocabulary))
            : null;

    /// <summary>The law for a folder; null with problems when law or path cannot be read at all.</summary>
    public static Lawbook? OpenLaw(string path, string? dataFolder, Problems problems) => OpenLaw(path, dataFolder, problems, out _);

    private static Lawbook? OpenLaw(string path, string? dataFolder, Problems problems, out IReadOnlyDictionary<string, string> data)
    {
        data = ShippedFiles.Data(dataFolder, problems);
        if (ShippedLaw.Open(data, dataFolder, problems) is not { } lawbook)
        {
            return null;
        }

        if (!Directory.Exists(path) && !File.Exists(path))
        {
            problems.Add(new TextPlace(path, 0, 0), "There is no such file or folder.", "Name a folder of declarations.");
            return null;
        }

        return lawbook;
    }
}
