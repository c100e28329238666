namespace Chandlery.Tests.SecondCalculation;

/// <summary>A hazard class and category taken from text such as <c>Skin Sens. 1B, H317</c> or <c>PBT, EUH440</c>.</summary>
/// <param name="Class">Class without category, such as <c>Skin Sens.</c>.</param>
/// <param name="Category">Category such as <c>1B</c>; empty for classes that have none.</param>
/// <param name="Statement">Statement code; empty when none is given.</param>
internal sealed record HazardText(string Class, string Category, string Statement)
{
    /// <summary>Reads the text.</summary>
    public static HazardText Read(string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);

        // "H373 (kidneys)" names the organ behind the code.
        string statement = parts.Length > 1 ? parts[1].Split(' ')[0] : "";
        int blank = parts[0].LastIndexOf(' ');
        return blank > 0 && char.IsAsciiDigit(parts[0][blank + 1])
            ? new HazardText(parts[0][..blank], parts[0][(blank + 1)..], statement)
            : new HazardText(parts[0], "", statement);
    }

    /// <summary>Class and category without the statement.</summary>
    public string Code => Category.Length == 0 ? Class : Class + " " + Category;
}
