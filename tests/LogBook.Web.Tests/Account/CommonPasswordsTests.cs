using LogBook.Web.Account;

namespace LogBook.Web.Tests.Account;

public sealed class CommonPasswordsTests
{
    [Theory]
    [InlineData("password1234")]
    [InlineData("Password123!")]
    [InlineData("123456789012")]
    [InlineData("987654321098")]
    [InlineData("qwertyqwerty")]
    [InlineData("aaaaaaaaaaaa")]
    [InlineData("winterwinter")]
    [InlineData("abcdefghijkl")]
    [InlineData("contraseña123")]
    [InlineData("administrador1")]
    [InlineData("yafflequernwath1")]
    public void IsCommon_TriedFirst_IsTrue(string password) => Assert.True(CommonPasswords.IsCommon(password, "r.yaffle@quernwath.example"));

    [Theory]
    [InlineData("basin before breakfast")]
    [InlineData("four grey pumps humming")]
    [InlineData("tk7-Vw9q-Zr2p")]
    [InlineData("senha do telhado azul e frio")]
    public void IsCommon_LongAndOwn_IsFalse(string password) => Assert.False(CommonPasswords.IsCommon(password, "r.yaffle@quernwath.example"));
}
