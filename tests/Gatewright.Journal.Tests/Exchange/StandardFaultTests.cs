using System.Text;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with a standard's file.</summary>
public sealed class StandardFaultTests
{
    public static TheoryData<string, string, string> Faults => new()
    {
        {
            "nothing",
            "",
            "standard.json, line 1: not JSON from about character 1 of this line on: look for a missing comma, quote mark or bracket."
        },
        {
            "no JSON",
            """name = ours""",
            "standard.json, line 1: not JSON from about character 2 of this line on: look for a missing comma, quote mark or bracket."
        },
        {
            "a bracket missing",
            "{\n  \"format\": \"gatewright.standard/1\",\n  \"name\": \"ours\"\n",
            "standard.json, line 4: not JSON from about character 1 of this line on: look for a missing comma, quote mark or bracket."
        },
        {
            "a list",
            """[1]""",
            "standard.json, at $: '[1]' is not a standard: expected an object, { \"format\": ... }."
        },
        {
            "an empty object",
            """{}""",
            Csv.Messages(
                "standard.json, at $.format: missing: expected \"gatewright.standard/1\".",
                "standard.json, at $.name: missing: expected what the club calls this standard, in quote marks.",
                "standard.json, at $.catch: missing: expected { \"lowest\", \"highest\", \"floor\" } in degrees. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.abeam: missing: expected { \"lowest\", \"highest\", \"floor\" } in degrees. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.finish: missing: expected { \"lowest\", \"highest\", \"floor\" } in degrees. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.largestDrop: missing: expected degrees, a number from 0 to 30. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.largestRange: missing: expected degrees, a number from 0 to 30. Or state \"extends\": \"club\" to take from there what is not given.")
        },
        {
            "another format",
            """{"format":"gatewright.standard/2","name":"ours","extends":"club"}""",
            "standard.json, at $.format: 'gatewright.standard/2' is not the format that is read here: expected \"gatewright.standard/1\"."
        },
        {
            "a format that is no text",
            """{"format":1,"name":"ours","extends":"club"}""",
            "standard.json, at $.format: '1' is not the format that is read here: expected \"gatewright.standard/1\"."
        },
        {
            "no name",
            """{"format":"gatewright.standard/1","extends":"club"}""",
            "standard.json, at $.name: missing: expected what the club calls this standard, in quote marks."
        },
        {
            "a blank name",
            """{"format":"gatewright.standard/1","name":"  ","extends":"club"}""",
            "standard.json, at $.name: '' is not a name: expected text of 1 to 200 visible characters, in quote marks."
        },
        {
            "a name that is no text",
            """{"format":"gatewright.standard/1","name":8,"extends":"club"}""",
            "standard.json, at $.name: '8' is not a name: expected text of 1 to 200 visible characters, in quote marks."
        },
        {
            "a standard that is not built in",
            """{"format":"gatewright.standard/1","name":"ours","extends":"school","catch":{"lowest":3}}""",
            "standard.json, at $.extends: 'school' is not a built-in standard: expected club or race."
        },
        {
            "a standard that is no text",
            """{"format":"gatewright.standard/1","name":"ours","extends":null}""",
            "standard.json, at $.extends: 'null' is not a built-in standard: expected club or race."
        },
        {
            "limits left out without a standard to extend",
            """{"format":"gatewright.standard/1","name":"ours","catch":{"lowest":3,"highest":5,"floor":2},"abeam":{"highest":5},"largestDrop":2}""",
            Csv.Messages(
                "standard.json, at $.abeam.lowest: missing: expected degrees, a number from -30 to 30. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.abeam.floor: missing: expected degrees, a number from -30 to 30. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.finish: missing: expected { \"lowest\", \"highest\", \"floor\" } in degrees. Or state \"extends\": \"club\" to take from there what is not given.",
                "standard.json, at $.largestRange: missing: expected degrees, a number from 0 to 30. Or state \"extends\": \"club\" to take from there what is not given.")
        },
        {
            "lowest above highest",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"lowest":5,"highest":4}}""",
            "standard.json, at $.catch.lowest: '5' is above highest (4): expected lowest to be at most highest."
        },
        {
            "lowest above the highest of the club",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","abeam":{"lowest":5.5}}""",
            "standard.json, at $.abeam.lowest: '5.5' is above highest (5 of club): expected lowest to be at most highest."
        },
        {
            "highest below the lowest of the club",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","abeam":{"highest":2.5,"floor":2}}""",
            "standard.json, at $.abeam.highest: '2.5' is below lowest (3 of club): expected lowest to be at most highest."
        },
        {
            "floor above lowest",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"lowest":2.5,"floor":3}}""",
            "standard.json, at $.catch.floor: '3' is above lowest (2.5): expected floor to be at most lowest."
        },
        {
            "floor above the lowest of the club",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","finish":{"floor":2}}""",
            "standard.json, at $.finish.floor: '2' is above lowest (1.5 of club): expected floor to be at most lowest."
        },
        {
            "lowest below the floor of the club",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"lowest":1.5}}""",
            "standard.json, at $.catch.lowest: '1.5' is below floor (2 of club): expected floor to be at most lowest."
        },
        {
            "a number in quote marks",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"lowest":"3,5"}}""",
            "standard.json, at $.catch.lowest: '3,5' is not a number: expected degrees, a number from -30 to 30, without quote marks and with a decimal point."
        },
        {
            "a number that is none",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","largestDrop":true}""",
            "standard.json, at $.largestDrop: 'true' is not a number: expected degrees, a number from 0 to 30."
        },
        {
            "a number that is nothing",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","largestRange":null}""",
            "standard.json, at $.largestRange: 'null' is not a number: expected degrees, a number from 0 to 30."
        },
        {
            "a pitch out of range",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"highest":50}}""",
            "standard.json, at $.catch.highest: '50' is out of range: expected degrees, a number from -30 to 30."
        },
        {
            "a number beyond all numbers",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"highest":1e999}}""",
            "standard.json, at $.catch.highest: '1e999' is out of range: expected degrees, a number from -30 to 30."
        },
        {
            "a drop below 0",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","largestDrop":-1}""",
            "standard.json, at $.largestDrop: '-1' is out of range: expected degrees, a number from 0 to 30."
        },
        {
            "limits that are a number",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":3}""",
            "standard.json, at $.catch: '3' is not a set of limits: expected { \"lowest\", \"highest\", \"floor\" } in degrees."
        },
        {
            "a key mistyped",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","largestdrop":2}""",
            "standard.json, at $.largestdrop: not a key of this format: did you mean largestDrop?"
        },
        {
            "a key of a station mistyped",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","finish":{"lowst":2}}""",
            "standard.json, at $.finish.lowst: not a key of this format: did you mean lowest?"
        },
        {
            "a key of another kind",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","colour":"red"}""",
            "standard.json, at $.colour: not a key of this format: expected format, name, extends, catch, abeam, finish, largestDrop, largestRange."
        },
        {
            "a key twice",
            """{"format":"gatewright.standard/1","name":"ours","extends":"club","largestDrop":2,"largestDrop":3}""",
            "standard.json, at $.largestDrop: stands there more than once: keep one."
        },
        {
            "several faults",
            """{"format":"x","nam":"ours","extends":"club","catch":{"lowest":"a","highest":99},"abeam":[],"largestRange":-2}""",
            Csv.Messages(
                "standard.json, at $.nam: not a key of this format: did you mean name?",
                "standard.json, at $.format: 'x' is not the format that is read here: expected \"gatewright.standard/1\".",
                "standard.json, at $.name: missing: expected what the club calls this standard, in quote marks.",
                "standard.json, at $.catch.lowest: 'a' is not a number: expected degrees, a number from -30 to 30, without quote marks and with a decimal point.",
                "standard.json, at $.catch.highest: '99' is out of range: expected degrees, a number from -30 to 30.",
                "standard.json, at $.abeam: '[]' is not a set of limits: expected { \"lowest\", \"highest\", \"floor\" } in degrees.",
                "standard.json, at $.largestRange: '-2' is out of range: expected degrees, a number from 0 to 30.")
        },
        {
            "half a character escaped",
            """{"format":"gatewright.standard/1","name":"\uD800","extends":"club"}""",
            "standard.json: has an escaped character in it that is only half of one: type the text itself instead of \\u and a number."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(32, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_is_named_at_once_with_its_path_and_what_was_expected(string fault, string json, string expected)
    {
        Assert.NotEmpty(fault);
        StandardInput input = Read(Encoding.UTF8.GetBytes(json));
        Assert.Null(input.Standard);
        Assert.Equal(expected, Csv.Messages([.. input.Errors.Select(e => e.ToString())]));
    }

    [Fact]
    public void A_file_that_is_far_too_long_is_no_standard() => Assert.Equal(
        "standard.json: longer than 65,536 bytes: this is not a standard.",
        Assert.Single(Read(new byte[65_537]).Errors).ToString());

    [Fact]
    public void Bytes_that_are_not_UTF8_are_no_standard() => Assert.Equal(
        "standard.json: holds bytes that are not UTF-8: save it in that encoding.",
        Assert.Single(Read([.. "{\n  \"name\": \"M"u8, 0xF6, .. "we\"}"u8]).Errors).ToString());

    private static StandardInput Read(byte[] file) => StandardFile.Read("standard.json", new MemoryStream(file));
}
