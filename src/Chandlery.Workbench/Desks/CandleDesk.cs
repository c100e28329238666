using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Desks;

/// <summary>A candle on the desk: its text with edits, what it declares, and what follows.</summary>
/// <param name="Form">The declaration.</param>
/// <param name="Catalogue">The folder with this candle in place of the one on disk.</param>
/// <param name="Assessments">One for each edition; empty when there are problems.</param>
/// <param name="Problems">What is wrong.</param>
internal sealed record CandleDesk(
    FormDesk Form,
    Catalogue Catalogue,
    IReadOnlyList<Assessment> Assessments,
    IReadOnlyList<Problem> Problems
)
{
    /// <summary>Lays a candle or batch of the folder on the desk, a new candle when it has no name; null when the folder declares none of that name.</summary>
    public static CandleDesk? Lay(Workroom room, string? id, IReadOnlyList<FieldEdit>? edits, DateOnly asOf) =>
        Lay(room, new FormRequest("candle", id, edits), asOf) ?? Lay(room, new FormRequest("batch", id, edits), asOf);

    /// <summary>Lays a candle or batch on the desk, a new one when it has no name; null when there is none of that name.</summary>
    public static CandleDesk? Lay(Workroom room, FormRequest request, DateOnly asOf)
    {
        if (FormDesk.Lay(room, request) is not { } form)
        {
            return null;
        }

        DeclarationFolder folder = form.Folder;
        var problems = new Problems();
        problems.AddRange(form.Problems);
        Catalogue catalogue = form.Declared is { } edited ? With(folder, edited, problems) : folder.Catalogue;
        IReadOnlyList<Assessment> assessments =
            problems.None && form.Declared is { } declared
                ? new Assessor(room.Lawbook, catalogue, asOf).Assess(declared, null, problems)
                : [];
        return new CandleDesk(form, catalogue, problems.None ? assessments : [], problems.Found);
    }

    /// <summary>The wax or base of an assessed candle, which there is: without it nothing is assessed.</summary>
    public Wax WaxOf(Assessment a) => Catalogue.OfKind<Wax>().First(w => w.Id == a.Candle.Wax.Id);

    /// <summary>The folder with a declaration in place of the one of its kind and name, or beside the others.</summary>
    public static Catalogue With(DeclarationFolder folder, IDeclaration edited, Problems problems)
    {
        bool IsSame(IDeclaration d) => d.Id == edited.Id && d.GetType() == edited.GetType();
        IEnumerable<IDeclaration> all = folder.Catalogue.All.Any(IsSame)
            ? folder.Catalogue.All.Select(d => IsSame(d) ? edited : d)
            : folder.Catalogue.All.Append(edited);
        string kind = DeclaredFile.KindOf(edited);
        return new Catalogue(all, problems, folder.Catalogue.Wrong.Where(w => w.Id != edited.Id || w.Kind != kind));
    }
}
