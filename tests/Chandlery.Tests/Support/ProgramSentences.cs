using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Chandlery.Tests.Support;

/// <summary>The texts in the program's source, each with <see cref="Hole"/> for what is filled in while it runs.</summary>
internal static class ProgramSentences
{
    /// <summary>Stands for a value that is not known before the program runs.</summary>
    public const char Hole = '\u0001';

    /// <summary>All texts of the source files under some folders of <c>src</c>.</summary>
    public static IEnumerable<(string File, string Text)> Of(params IEnumerable<string> folders) =>
        from folder in folders
        from file in Directory.EnumerateFiles(Path.Combine(TestLaw.Repository, "src", folder), "*.cs", SearchOption.AllDirectories)
        let name = Path.GetRelativePath(Path.Combine(TestLaw.Repository, "src"), file).Replace('\\', '/')
        where !name.Contains("/obj/", StringComparison.Ordinal) && !name.Contains("/bin/", StringComparison.Ordinal)
        from text in Texts(File.ReadAllText(file))
        select (name, text);

    private static IEnumerable<string> Texts(string source) =>
        CSharpSyntaxTree
            .ParseText(source)
            .GetRoot()
            .DescendantNodes()
            .OfType<ExpressionSyntax>()
            .Where(e => IsText(e) && e.Parent is not BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression })
            .Select(Whole);

    private static bool IsText(ExpressionSyntax expression) =>
        expression switch
        {
            LiteralExpressionSyntax literal => literal.IsKind(SyntaxKind.StringLiteralExpression),
            InterpolatedStringExpressionSyntax => true,
            BinaryExpressionSyntax sum => sum.IsKind(SyntaxKind.AddExpression) && (IsText(sum.Left) || IsText(sum.Right)),
            _ => false,
        };

    private static string Whole(ExpressionSyntax expression) =>
        expression switch
        {
            LiteralExpressionSyntax literal when IsText(literal) => literal.Token.ValueText,
            InterpolatedStringExpressionSyntax text => string.Concat(
                text.Contents.Select(c => c is InterpolatedStringTextSyntax fix ? Unescaped(fix.TextToken.ValueText) : $"{Hole}")
            ),
            BinaryExpressionSyntax sum when IsText(sum) => Whole(sum.Left) + Whole(sum.Right),
            _ => $"{Hole}",
        };

    private static string Unescaped(string text) =>
        text.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);
}
