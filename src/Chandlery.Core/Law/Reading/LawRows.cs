using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>What every row of the law ends with.</summary>
internal static class LawRows
{
    /// <summary>Closes a row: how it was checked must stand there, and which stricter reading was taken may.</summary>
    public static void Close(Fields row)
    {
        row.Text("confidence", "how it was checked");
        row.OptionalText("stricter");
        row.Done();
    }
}
