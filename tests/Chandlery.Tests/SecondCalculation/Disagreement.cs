namespace Chandlery.Tests.SecondCalculation;

/// <summary>A mixture on which the program and the second calculation differ.</summary>
/// <param name="Mixture">The mixture.</param>
/// <param name="Program">The program's answer.</param>
/// <param name="Second">The second calculation's answer.</param>
/// <param name="Differences">What differs, each in few words.</param>
internal sealed record Disagreement(GivenMixture Mixture, ComparedAnswer Program, SecondAnswer Second, IReadOnlyList<string> Differences)
{
    /// <summary>The mixture as declared, and both answers.</summary>
    public override string ToString() =>
        $"""
              {MixtureText.Write(Mixture)}
              program: {Told(Program.Classes, Program.Label)} / names {string.Join(", ", Program.Named)}
              second:  {Told(Second.Classes, Second.Label)} / names must hold {Must(Second.Names)}
            """;

    private static string Must(NamesOnLabel names) =>
        string.Join(
            ", ",
            names.Sensitisers.Select(s => s + " (sensitiser)").Concat(names.Chiefs.Select(c => $"{string.Join(" or ", c.Value)} ({c.Key})"))
        );

    private static string Told(IReadOnlyList<string> classes, SecondLabel label) =>
        $"{string.Join(", ", classes)} / {string.Join(" ", label.Pictograms)} {label.SignalWord} {string.Join(" ", label.Statements)}";
}
