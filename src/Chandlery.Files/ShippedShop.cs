using Chandlery.Paper.Papers;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Sets up what documents are made with.</summary>
public static class ShippedShop
{
    /// <summary>The templates and drawings that travel inside the program.</summary>
    /// <param name="data">Texts under <c>data/</c>, as <see cref="ShippedFiles.Data"/> gives them.</param>
    /// <param name="templates">A folder whose templates win; null for none.</param>
    /// <param name="problems">Receives unreadable files and faults in the drawings.</param>
    public static PaperShop Open(IReadOnlyDictionary<string, string> data, string? templates, Problems problems) =>
        new(new TemplateShelf(ShippedFiles.Templates(templates, problems)), SymbolSheet.Read(data, problems));
}
