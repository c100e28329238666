using System.Diagnostics.CodeAnalysis;

namespace Chandlery.Yaml;

/// <summary>What came of reading a text: a value, or the reason in words why there is none.</summary>
/// <typeparam name="T">What the text should hold.</typeparam>
public sealed class Parsed<T>
    where T : notnull
{
    private readonly T? value;

    internal Parsed(T? value, string? reason)
    {
        this.value = value;
        Reason = reason;
    }

    /// <summary>True when there is a value.</summary>
    [MemberNotNullWhen(false, nameof(Reason))]
    public bool Success => Reason is null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is <see cref="Reason"/>.</exception>
    public T Value => Success ? value! : throw new InvalidOperationException(Reason);

    /// <summary>What is wrong and what to write instead; null when there is a value.</summary>
    public string? Reason { get; }
}
