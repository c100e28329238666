namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// A second, independent calculation of the mixture rules of Regulation (EC) No 1272/2008, Annex I parts 3 to 5, with the
/// labelling rules that follow from them. It shares no code and no figures with the program, so that the two can be compared.
/// </summary>
/// <remarks>
/// Clauses and figures follow the text consolidated to 1 May 2026 where nothing else is said. Left out: physical hazards,
/// aspiration (a candle is solid at 40 degrees), pH, bridging, and the experts' decision on effects that do not add up
/// (3.2.3.3.4, 3.3.3.3.4).
/// </remarks>
internal static class SecondClassifier
{
    /// <summary>Classifies a mixture and says what its label shows.</summary>
    public static SecondAnswer Answer(GivenMixture mixture)
    {
        List<FoundClass> classes = [.. Classes(mixture).OrderBy(c => c.Code, StringComparer.Ordinal)];
        IReadOnlyList<string> sensitisers = Elicitation.Named(mixture);
        List<ClassElements> elements = [.. classes.Select(c => Elements(mixture, c))];
        return new SecondAnswer(
            [.. classes.Select(c => c.Code)],
            SecondLabel.Of(elements, sensitisers.Count > 0),
            NamesOnLabel.Of(classes, sensitisers),
            AcuteToxicity.StatedUnknownPercent(mixture),
            AquaticHazards.StatedUnknownPercent(mixture)
        );
    }

    private static ClassElements Elements(GivenMixture mixture, FoundClass found)
    {
        ClassElements elements = ClassElements.Of(found.Code);
        return found.Code.StartsWith("Repr.", StringComparison.Ordinal)
            ? elements with
            {
                Statement = ReproductiveEffects.Statement(mixture, found, elements.Statement),
            }
            : elements;
    }

    private static IEnumerable<FoundClass> Classes(GivenMixture mixture)
    {
        FoundClass? skin = SkinEffects.Of(mixture);
        FoundClass? eye = EyeEffects.Of(mixture, skin);
        return new[] { skin, eye }
            .OfType<FoundClass>()
            .Concat(AcuteToxicity.Of(mixture))
            .Concat(AloneClasses.Of(mixture))
            .Concat(AirwaysAndNarcosis.Of(mixture))
            .Concat(AquaticHazards.Of(mixture));
    }
}
