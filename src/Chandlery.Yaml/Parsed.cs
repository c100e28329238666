namespace Chandlery.Yaml;

/// <summary>Makes and opens what came of reading a text.</summary>
public static class Parsed
{
    /// <summary>The text holds this value.</summary>
    public static Parsed<T> As<T>(T value)
        where T : notnull => new(value, null);

    /// <summary>The text holds no value.</summary>
    /// <param name="reason">What is wrong and what to write instead.</param>
    public static Parsed<T> Not<T>(string reason)
        where T : notnull => new(default, reason);

    /// <summary>The value; null when there is none, for whoever has no use for the reason.</summary>
    public static T? OrNull<T>(this Parsed<T> parsed)
        where T : class => parsed.Success ? parsed.Value : null;
}
