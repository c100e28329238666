namespace Chandlery.Yaml;

/// <summary>Where in a file something stands.</summary>
/// <param name="File">File name as the user knows it.</param>
/// <param name="Line">Line, from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column, from 1.</param>
public sealed record TextPlace(string File, int Line, int Column)
{
    /// <summary><c>file:line:column</c>, as editors understand it.</summary>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}
