namespace Gatewright.Core.Mending;

/// <summary>How long work at one gate takes, roughly, in minutes: ours, from judgement, for a practised hand.</summary>
internal static class JobMinutes
{
    public const int InsertSwap = 10;

    public const int PinFootShim = 20;

    public const int PlateWasher = 15;

    public const int Backstay = 10;

    public const int ReplacePin = 25;
}
