namespace Chandlery.Cli;

/// <summary>What the program's exit code says.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Fine = 0;

    /// <summary>Something stops a sale, a paper that is due is missing, or something in a draft must be read again.</summary>
    public const int StopsSale = 1;

    /// <summary>Something in the input is wrong; what depends on it was left out, and what else was asked for was done.</summary>
    public const int BadInput = 2;

    /// <summary>The program itself is at fault.</summary>
    public const int Fault = 3;
}
