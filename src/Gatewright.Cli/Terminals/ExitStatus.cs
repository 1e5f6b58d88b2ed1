namespace Gatewright.Cli.Terminals;

/// <summary>What the program's exit tells a script.</summary>
internal static class ExitStatus
{
    /// <summary>Done; of a check: every gate that was read is good.</summary>
    public const int Good = 0;

    /// <summary>Something needs attention.</summary>
    public const int Attention = 1;

    /// <summary>The input is wrong: nothing was judged.</summary>
    public const int WrongInput = 2;

    /// <summary>A store cannot be used: EX_IOERR of sysexits.h, as the server ends with.</summary>
    public const int StoreUnusable = 74;
}
