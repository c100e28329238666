using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Reads declarations that are kept elsewhere than in a folder: in the register, or inside an archive's PDF.</summary>
public static class DeclaredTexts
{
    /// <summary>What the texts declare.</summary>
    /// <param name="files">Each text with the name that it had in the maker's folder.</param>
    /// <param name="vocabulary">Hazard classes that declarations may name.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static Catalogue Read(IEnumerable<(string Name, string Text)> files, HazardVocabulary vocabulary, Problems problems)
    {
        var reader = new DeclarationReader(vocabulary);
        List<IDeclaration> read =
        [
            .. files.Select(f => reader.Read(f.Text, f.Name, Path.GetFileNameWithoutExtension(f.Name), problems)).OfType<IDeclaration>(),
        ];
        return new Catalogue(read, problems);
    }
}
