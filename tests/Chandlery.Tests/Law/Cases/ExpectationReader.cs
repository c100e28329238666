using Chandlery.Core.Hazards;
using Chandlery.Core.Law.Reading;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Tests.Law.Cases;

/// <summary>Reads what a case says of the answer (<c>then</c>), and refuses codes and names that nothing bears.</summary>
internal sealed class ExpectationReader(LawCodes codes)
{
    private const string None = "none";

    private static readonly ExpectationMatch[] Matches = Enum.GetValues<ExpectationMatch>();

    /// <summary>The expectations under <c>then</c>.</summary>
    /// <param name="owner">The case.</param>
    /// <param name="ingredients">Names of the case's ingredients.</param>
    public IReadOnlyList<Expectation> Read(Fields owner, IReadOnlyList<string> ingredients)
    {
        Fields fields = owner.Group("then", "{ classes: [Skin Sens. 1B] }");
        List<Expectation> found =
        [
            .. CaseQuestion.Lists.SelectMany(q => ReadLists(fields, q, ingredients)),
            .. ReadSignalWord(fields),
            .. ReadUnknown(fields, CaseQuestion.UnknownToxicity),
            .. ReadUnknown(fields, CaseQuestion.UnknownAquatic),
            .. ReadAtMost(fields),
            .. ReadSmallPackage(fields, ingredients),
        ];
        fields.Done();
        if (found.Count == 0 && owner.Has("then"))
        {
            owner.Problems.Add(
                owner.PlaceOf("then"),
                "The case expects nothing.",
                "Say at least what the classes are: 'classes: []' for none."
            );
        }

        return found;
    }

    private IEnumerable<Expectation> ReadLists(Fields fields, CaseQuestion question, IReadOnlyList<string> ingredients)
    {
        foreach (ExpectationMatch match in Matches)
        {
            string key = question.Field + Expectation.Suffix(match);
            bool isThere = fields.Has(key);
            IReadOnlyList<string> values = fields.Texts(key);
            if (isThere)
            {
                Check(fields, key, question.Values, ingredients);
                yield return new Expectation(question, match, values);
            }
        }
    }

    private static IEnumerable<Expectation> ReadSignalWord(Fields fields)
    {
        CaseQuestion question = CaseQuestion.SignalWord;
        if (fields.Take(question.Field) is not null)
        {
            string word = fields.Choice(question.Field, [None, .. SignalWord.All.Select(w => w.Text)]);
            yield return new Expectation(question, ExpectationMatch.Exact, word == None ? [] : [word]);
        }
    }

    private static IEnumerable<Expectation> ReadUnknown(Fields fields, CaseQuestion question)
    {
        switch (fields.Take(question.Field))
        {
            case null:
                yield break;
            case YamlScalar { Text: None }:
                yield return new Expectation(question, ExpectationMatch.Exact, []);
                yield break;
            case { } value:
                string percent = CaseQuestion.Percent(
                    fields.ReadNumber(value, $"'{question.Field}'", new NumberField(question.Field, "%", "12", 0, 100))
                );
                yield return new Expectation(question, ExpectationMatch.Exact, [percent]);
                yield break;
        }
    }

    private static IEnumerable<Expectation> ReadAtMost(Fields fields) =>
        fields.OptionalNumber("precautionsAtMost", 0, 100) is { } number
            ? [new Expectation(CaseQuestion.PrecautionsBeyond((int)number), ExpectationMatch.Exact, [])]
            : [];

    private IEnumerable<Expectation> ReadSmallPackage(Fields fields, IReadOnlyList<string> ingredients)
    {
        if (fields.OptionalGroup("smallPackage") is not { } group)
        {
            return [];
        }

        double millilitres = group.Number("ml", 0, 100_000, "125");
        List<Expectation> found = [.. ReadLists(group, CaseQuestion.MayLeaveOff(millilitres), ingredients)];
        group.Done();
        return found;
    }

    private void Check(Fields fields, string key, CaseValueKind kind, IReadOnlyList<string> ingredients)
    {
        switch (kind)
        {
            case CaseValueKind.Class:
                codes.Categories(fields, key);
                break;
            case CaseValueKind.Statement:
                codes.Statements(fields, key);
                break;
            case CaseValueKind.Pictogram:
                fields.Choices(key, [.. Pictogram.All.Select(p => p.Code)]);
                break;
            case CaseValueKind.StatementOrPictogram:
                foreach (YamlValue item in fields.List(key).Where(i => i is not YamlScalar { Text: var t } || Pictogram.Find(t) is null))
                {
                    codes.Find(fields, (item as YamlScalar)?.Text ?? "?", item.Place);
                }

                break;
            case CaseValueKind.Ingredient:
                fields.Choices(key, [.. ingredients]);
                break;
            default:
                break;
        }
    }
}
