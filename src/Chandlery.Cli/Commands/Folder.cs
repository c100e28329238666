using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Opens law and folder for commands that go on when some declarations are wrong.</summary>
internal sealed record Folder(IReadOnlyDictionary<string, string> Data, Lawbook Lawbook, DeclarationFolder Declarations)
{
    /// <summary>The folder; null with problems when law or path cannot be read at all.</summary>
    public static Folder? Open(string path, string? dataFolder, Problems problems)
    {
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(dataFolder, problems);
        if (LawReader.Read(data, problems) is not { } lawbook)
        {
            return null;
        }

        if (!Directory.Exists(path) && !File.Exists(path))
        {
            problems.Add(new TextPlace(path, 0, 0), "There is no such file or folder.", "Name a folder of declarations.");
            return null;
        }

        return new Folder(data, lawbook, DeclarationFolder.Open(path, lawbook.Vocabulary));
    }
}
