using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>label-elements.yaml</c>: what a classification puts on the label.</summary>
internal sealed class LabelElementsReader(LawCodes codes)
{
    public (
        List<LabelElement> Elements,
        List<PictogramPrecedence> Pictograms,
        List<StatementPrecedence> Statements,
        NamingRules Naming,
        List<IngredientStatement> IngredientStatements
    ) Read(Fields fields)
    {
        fields.Text("confidence", "how the rows were checked");
        List<LabelElement> elements = [.. fields.Groups("elements").SelectMany(ReadElement)];
        List<PictogramPrecedence> pictograms = [.. fields.Groups("pictogramPrecedence").Select(ReadPictogramPrecedence)];
        List<StatementPrecedence> statements =
        [
            .. fields.Groups("statementPrecedence").Select(ReadStatementPrecedence),
            .. fields.Groups("statementCombination").Select(ReadStatementCombination),
        ];
        Fields group = fields.Group("naming", "{ clause: ..., normallyEnough: 4 }");
        var naming = new NamingRules((int)group.Number("normallyEnough", 0, 100, "4"), LawCodes.Citation(group));

        // The clause is a note for readers of the data; each named sensitiser carries its own.
        group.OptionalText("sensitisersAlways");
        group.Done();
        List<IngredientStatement> ingredients = [.. fields.Groups("ingredientStatements").Select(ReadIngredientStatement)];
        fields.Done();
        return (elements, pictograms, statements, naming, ingredients);
    }

    private IngredientStatement ReadIngredientStatement(Fields row)
    {
        var statement = new IngredientStatement(
            codes.Statement(row, "statement"),
            row.Texts("cas"),
            new MassPercent(row.Number("fromPercent", 0, 100, "1")),
            new InForce(row.OptionalDay("from"), row.OptionalDay("until")),
            LawCodes.Citation(row),
            row.OptionalText("stricter") ?? ""
        );
        LawRows.Close(row);
        return statement;
    }

    private IEnumerable<LabelElement> ReadElement(Fields fields)
    {
        IReadOnlyList<HazardCategory> hazards = codes.Categories(fields, "hazards");
        Pictogram? pictogram = LawCodes.OptionalPictogram(fields, "pictogram");
        SignalWord? signalWord = LawCodes.OptionalSignalWord(fields, "signalWord");
        Citation clause = LawCodes.Citation(fields);
        fields.Done();
        return hazards.Select(h => new LabelElement(h, pictogram, signalWord, clause));
    }

    private PictogramPrecedence ReadPictogramPrecedence(Fields fields)
    {
        var row = new PictogramPrecedence(
            LawCodes.Pictogram(fields, "whenPresent"),
            codes.OptionalStatement(fields, "whenStatement"),
            LawCodes.Pictogram(fields, "leaveOff"),
            codes.Statements(fields, "calledForOnlyBy"),
            LawCodes.Citation(fields)
        );
        fields.Done();
        return row;
    }

    private StatementPrecedence ReadStatementPrecedence(Fields fields)
    {
        StatementCode present = codes.Statement(fields, "whenPresent");
        StatementCode gone = codes.Statement(fields, "leaveOff");
        var row = new StatementPrecedence([present, gone], present, [gone], LawCodes.Citation(fields));
        fields.Done();
        return row;
    }

    private StatementPrecedence ReadStatementCombination(Fields fields)
    {
        IReadOnlyList<StatementCode> all = codes.Statements(fields, "all");
        var row = new StatementPrecedence(all, codes.Statement(fields, "use"), all, LawCodes.Citation(fields));
        LawRows.Close(fields);
        return row;
    }
}
