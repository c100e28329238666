namespace Chandlery.Tests.Law.Cases;

/// <summary>What the values of a case's list are.</summary>
internal enum CaseValueKind
{
    /// <summary>A class with its category, such as Skin Sens. 1B.</summary>
    Class,

    /// <summary>The code of a statement.</summary>
    Statement,

    /// <summary>The code of a pictogram.</summary>
    Pictogram,

    /// <summary>The code of a statement or of a pictogram.</summary>
    StatementOrPictogram,

    /// <summary>The name of one of the case's ingredients.</summary>
    Ingredient,

    /// <summary>A word or figure.</summary>
    Word,

    /// <summary>Part of a sentence: it is enough that a sentence holds it.</summary>
    Text,
}
