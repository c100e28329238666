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

    /// <summary>The value of a name; null where none has it. Figures and several names at once are no name.</summary>
    public static T? Find<T>(string name)
        where T : struct, Enum => All<T>().Contains(name) ? Enum.Parse<T>(name, ignoreCase: true) : null;

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
