using Chandlery.Core.Declared;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>
/// A second reading of a table that stands on its side. What could have gone wrong there shows: a line under the wrong heading shifts its
/// cell against the others, or stands among figures; a word in the wrong ingredient's column does not begin where its lines do.
/// </summary>
/// <param name="wording">How shares are written.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class TurnedCheck(SheetWording wording, HazardText hazards)
{
    private const double SameEdgeMm = 0.6;
    private static readonly string[] OfNumbers = [ColumnKind.Cas, ColumnKind.Ec, ColumnKind.Ignored];
    private static readonly string[] OfHazards =
    [
        ColumnKind.Classes,
        ColumnKind.Statements,
        ColumnKind.Limits,
        ColumnKind.M,
        ColumnKind.Ate,
    ];

    /// <summary>True when nothing in a table speaks against the way in which its lines were given to headings and ingredients.</summary>
    /// <param name="columns">What each heading names.</param>
    /// <param name="headings">The lines of each heading.</param>
    /// <param name="ingredients">The cells of each ingredient, one for each heading.</param>
    public bool IsSure(IReadOnlyList<Column> columns, IReadOnlyList<Cell> headings, IReadOnlyList<IReadOnlyList<Cell>> ingredients)
    {
        List<TextLine> all = [.. headings.Concat(ingredients.SelectMany(i => i)).SelectMany(c => c.Lines)];
        IEnumerable<Row> bands = columns.Select(
            (_, h) => new Row(all[0].Page, [.. ingredients.Select(i => i[h]).Prepend(headings[h])], [], [])
        );
        return all.All(l => l.IsBeside(all[0]))
            && RowAlignment.Checked([.. bands], new HashSet<TextLine>()).All(b => b.Doubts.Count == 0)
            && ingredients.All(IsStraight)
            && ingredients.All(i => columns.Select((c, h) => Holds(c, i[h].Text)).All(holds => holds));
    }

    private static bool IsStraight(IReadOnlyList<Cell> cells)
    {
        List<Box> lines = [.. cells.SelectMany(c => c.Lines).Select(l => l.Frame)];
        bool Agree(Func<Box, double> place) => lines.Max(place) - lines.Min(place) < SameEdgeMm;
        return lines.Count > 0 && (Agree(b => b.Left) || Agree(b => b.CentreX));
    }

    // A cell holds nothing but what its heading names, as far as that can be told.
    private bool Holds(Column column, string text)
    {
        bool Is(string[] kinds) => column.Kinds.Count > 0 && column.Kinds.All(kinds.Contains);
        if (Is([ColumnKind.Name]))
        {
            return text.Any(char.IsLetter) && !hazards.Says(text) && !ColumnKind.HasCas(text);
        }

        if (Is(OfNumbers))
        {
            List<string> numbers = [.. ColumnKind.CasPattern().Matches(text).Select(m => m.Value)];
            int wanted = column.Kinds.Contains(ColumnKind.Cas) ? 1 : 0;
            return numbers.Count == wanted && numbers.TrueForAll(n => CasNumber.Parse(n).Success) && !text.Any(char.IsLetter);
        }

        return Is(ColumnKind.OfShares)
            ? ShareText.Read(text, wording, ColumnKind.IsPartsPerMillion(column.Heading)).Success
            : Is(OfHazards)
                && (!text.Any(char.IsLetterOrDigit) || hazards.Read(text, bareM: column.Kinds is [ColumnKind.M]).Doubts.Count == 0);
    }
}
