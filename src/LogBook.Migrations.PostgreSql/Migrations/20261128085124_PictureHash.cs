using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LogBook.Migrations.PostgreSql.Migrations
{
    /// <inheritdoc />
    public partial class PictureHash : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "FileSha256",
                table: "Photos",
                type: "text",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "FileSha256",
                table: "Photos");
        }
    }
}
