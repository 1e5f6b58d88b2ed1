using Gatewright.Core.Mending.Options;
using Gatewright.Words;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>What a person is told to do at a gate, so that two ways to do the same are one.</summary>
internal static class Instructions
{
    extension(GateOption option)
    {
        public string Instruction => Wording.English.Work.Instruction(option.Steps);
    }
}
