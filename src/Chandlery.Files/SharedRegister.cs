using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>What a maker's folder says of a register that several benches share.</summary>
public static class SharedRegister
{
    /// <summary>The connection string; null when the register is a file in the folder. No other declaration is read.</summary>
    /// <param name="folder">The maker's folder.</param>
    /// <exception cref="IOException">The maker's file is wrong, so that nobody can tell which register is meant.</exception>
    public static string? In(string folder)
    {
        string file = Path.Combine(folder, DeclarationFiles.MakerFile);
        var problems = new Problems();
        if (
            !File.Exists(file)
            || TextFile.ReadListed(file, file, problems) is not { } text
            || !text.Contains("sharedRegister:", StringComparison.Ordinal)
        )
        {
            return null;
        }

        return new DeclarationReader(new HazardVocabulary([])).Read(text, file, "maker", problems) is Maker maker
            ? maker.SharedRegister
            : throw new IOException($"{problems.Found[0]} Until that is mended, nobody can tell which register is meant.");
    }
}
