namespace Chandlery.Yaml.Shapes;

/// <summary>A number between two bounds, in the unit that its name says.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Example">What might stand there.</param>
/// <param name="Low">The lower bound.</param>
/// <param name="High">The most that it may be.</param>
public sealed record NumberField(string Key, string About, string Example, double Low, double High) : Field(Key, About)
{
    /// <summary>True when it may be the lower bound itself; false when it must be above.</summary>
    public bool LowAllowed { get; init; }

    /// <summary>True for a count.</summary>
    public bool Whole { get; init; }

    /// <summary>True when the number is within its bounds.</summary>
    public bool Allows(double number) =>
        (LowAllowed ? number >= Low : number > Low) && number <= High && (!Whole || double.IsInteger(number));

    /// <summary>What the number must be, in words.</summary>
    public string Bounds => $"{(Whole ? "a whole number, " : "")}{(LowAllowed ? $"{Low} or more" : $"above {Low}")} and at most {High}";
}
