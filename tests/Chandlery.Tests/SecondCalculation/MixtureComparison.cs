namespace Chandlery.Tests.SecondCalculation;

/// <summary>Sets the program's answer beside the second calculation's.</summary>
internal static class MixtureComparison
{
    /// <summary>What differs for a mixture under an edition of the law, or null.</summary>
    public static Disagreement? Of(GivenMixture mixture, SecondEdition edition)
    {
        ComparedAnswer program = ProgramAnswer.To(mixture, edition.Folder);
        SecondAnswer second = SecondClassifier.Answer(mixture, edition);
        List<string> found = [.. Differences("class", program.Classes, second.Classes)];
        if (program.FlammabilityUnknown != second.FlammabilityUnknown)
        {
            found.Add($"program {(program.FlammabilityUnknown ? "does not know" : "knows")} whether it is a flammable liquid");
        }

        if (found.Count == 0 && edition.PrintsHazards && !second.FlammabilityUnknown)
        {
            // The label follows from the classes: where those differ, nothing new is learnt from it. A liquid that may or may not be
            // flammable has none.
            found.AddRange(Differences("pictogram", program.Label.Pictograms, second.Label.Pictograms));
            found.AddRange(Differences("signal word", [program.Label.SignalWord], [second.Label.SignalWord]));
            found.AddRange(Differences("statement", program.Label.Statements, second.Label.Statements));
            found.AddRange((edition.NamesChiefs ? second.Names.Faults(program.Named) : []).Select(f => "names: " + f.Split(':')[0]));
        }

        // The second calculation counts an undeclared rest as an ingredient without data; the program states listed ingredients alone
        // and tells the rest apart. Without a rest they must agree.
        if (mixture.UndeclaredPercent == 0)
        {
            found.AddRange(Unknown("toxicity", program.UnknownPercent, second.UnknownPercent));
            found.AddRange(Unknown("hazard to waters", program.UnknownWatersPercent, second.UnknownWatersPercent));
        }

        return found.Count == 0 ? null : new Disagreement(mixture, program, second, [.. found.Distinct()]);
    }

    private static IEnumerable<string> Unknown(string what, double? program, double? second)
    {
        bool agree = program is { } p && second is { } s ? Math.Abs(p - s) < 1e-9 : program is null == second is null;
        return agree ? [] : [$"unknown {what}: program {program}, second {second}"];
    }

    private static IEnumerable<string> Differences(string what, IReadOnlyList<string> program, IReadOnlyList<string> second) =>
        [
            .. second.Except(program).Select(l => $"program lacks {what} {l}"),
            .. program.Except(second).Select(a => $"program adds {what} {a}"),
        ];
}
