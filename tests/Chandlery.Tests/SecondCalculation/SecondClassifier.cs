namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// A second, independent calculation of the mixture rules of Regulation (EC) No 1272/2008, Annex I parts 3 to 5, with the
/// labelling rules that follow from them. It shares no code and no figures with the program, so that the two can be compared.
/// </summary>
/// <remarks>
/// Clauses and figures follow the text consolidated to 1 May 2026 where nothing else is said; a <see cref="SecondEdition"/> says what
/// another law makes otherwise. Left out: physical hazards but flammable liquids, layers of a liquid (3.10.3.3.1.3), pH, bridging, and the experts' decision on effects that do not add up
/// (3.2.3.3.4, 3.3.3.3.4).
/// </remarks>
internal static class SecondClassifier
{
    /// <summary>Classifies a mixture and says what its label shows.</summary>
    public static SecondAnswer Answer(GivenMixture mixture, SecondEdition edition)
    {
        int? flammable = mixture.Liquid is { } liquid ? FlammableLiquids.Category(liquid, edition) : null;
        List<FoundClass> classes =
        [
            .. Classes(mixture, flammable, edition).Where(edition.Adopts).OrderBy(c => c.Code, StringComparer.Ordinal),
        ];
        IReadOnlyList<string> sensitisers = Elicitation.Named(mixture);
        bool vapour = edition.SaysVapour && FlammableVapour.IsStated(mixture, flammable, classes.Count > 0);
        List<ClassElements> elements = [.. classes.Select(c => Elements(mixture, c))];
        return new SecondAnswer(
            [.. classes.Select(c => c.Code)],
            SecondLabel.Of(elements, sensitisers.Count > 0, vapour, edition),
            NamesOnLabel.Of(classes, sensitisers),
            AcuteToxicity.StatedUnknownPercent(mixture),
            edition.NotAdopted.Contains("Aquatic") ? null : AquaticHazards.StatedUnknownPercent(mixture),
            mixture.Liquid is not null && flammable is null
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

    private static IEnumerable<FoundClass> Classes(GivenMixture mixture, int? flammable, SecondEdition edition)
    {
        FoundClass? skin = SkinEffects.Of(mixture, edition);
        FoundClass? eye = EyeEffects.Of(mixture, skin, edition);
        FoundClass? burning = flammable is < FlammableLiquids.None ? new FoundClass($"Flam. Liq. {flammable}", []) : null;
        return new[] { skin, eye, burning, Aspiration.Of(mixture) }
            .OfType<FoundClass>()
            .Concat(AcuteToxicity.Of(mixture, edition))
            .Concat(AloneClasses.Of(mixture, edition))
            .Concat(AirwaysAndNarcosis.Of(mixture))
            .Concat(AquaticHazards.Of(mixture, edition));
    }
}
