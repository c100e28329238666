namespace Chandlery.Cli;

/// <summary>What is said when the program itself is at fault, so that a maker can go on and a developer can look.</summary>
internal static class LastResort
{
    /// <summary>One paragraph: whose fault it is, what became of the files, whom to tell; the place in the code, no stack trace.</summary>
    public static string Say(Exception fault)
    {
        string place =
            fault.StackTrace?.Split('\n').Select(l => l.Trim()).FirstOrDefault(l => l.StartsWith("at Chandlery.", StringComparison.Ordinal))
            ?? "";
        string inside = place.Length == 0 ? "" : $" {place.Split(" in ")[0]}";
        string what = fault.Message.ReplaceLineEndings(" ");
        return $"This is a fault of the program, not of your files: {fault.GetType().Name}{inside}: {what} Files that it has named before are whole, and no other was touched. Please report this line with your command and what 'chandlery version' says.";
    }
}
