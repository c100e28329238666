namespace Chandlery.Yaml;

/// <summary>Names of enumerations as declarations, the law's data and answers write them: in lower camel case.</summary>
public static class EnumName
{
    /// <summary>The name of a value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => Lower(value.ToString());

    /// <summary>The names of all values, in their order.</summary>
    public static string[] All<T>()
        where T : struct, Enum => [.. Enum.GetNames<T>().Select(Lower)];

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
