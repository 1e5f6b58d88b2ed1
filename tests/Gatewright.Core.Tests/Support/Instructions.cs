using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Support;

/// <summary>What a person is told to do, by which tests on amounts and directions read what Core worked out.</summary>
internal static class Instructions
{
    extension(Remedy remedy)
    {
        public string Instruction => Wording.English.Remedies.Instruction(remedy);
    }

    extension(GateOption option)
    {
        public string Instruction => Wording.English.Work.Instruction(option.Steps);
    }
}
