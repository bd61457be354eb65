<#ftl output_format="plainText">
${greeting}

${lead}

<#list statements as statement>
- ${statement.what}
<#if statement.replaces?has_content>
  ${statement.replaces}
</#if>
</#list>

${closing}

${shop.name}
<#list shop.lines as line>
${line}
</#list>
<#list shop.contact as contact>
${contact.text}
</#list>
