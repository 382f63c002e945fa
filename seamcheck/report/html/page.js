"use strict";(()=>{var $0="http://www.w3.org/2000/svg";function _f(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return Lo(i,e),i}function Lo(i,t){for(let e of t)e!=null&&(Array.isArray(e)?Lo(i,e):i.append(e instanceof Node?e:String(e)))}function qt(i,t=null,...e){return _f(document.createElement(i),t,e)}function ut(i,t=null,...e){return _f(document.createElementNS($0,i),t,e)}function fe(i){return document.getElementById(i)}function en(i){for(;i.lastChild;)i.lastChild.remove()}var q=i=>String(Math.round(i*100)/100);function rn(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function Do(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var xf=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;var No={decimal:".",inch:!1,texts:{}},q0={mm:[25.4,"in",2],"mm²":[25.4**2,"in²",3],"mm³":[25.4**3,"in³",4],"mm/s":[25.4,"in/s",1]};function yf(i){i&&(No=i)}function yt(i,t={}){return(No.texts[i]??i).replace(/\{(\w+)\}/g,(e,n)=>n in t?String(t[n]):e)}function ss(i,t,e){let n=No.inch?q0[t]:void 0;return n?[i/n[0],n[1],Math.min(e+n[2],Math.max(4,n[2]))]:[i,t,e]}function _i(i,t){let e=i.toFixed(t);return(Number(e)===0?e.replace("-",""):e).replace(".",No.decimal)}function Rs(i,t){let[e,,n]=ss(i,"mm",t);return _i(e,n)}var Qs=()=>ss(0,"mm",0)[1],Ln=(i,t)=>`${Rs(i,t)} ${Qs()}`,Ei=()=>No.inch?25.4:1;function vf(i,t){let[e,n,s]=ss(i,"mm²",t);return`${_i(e,s)} ${n}`}function Fh(i){let t={};for(let e of i.querySelectorAll("[data-key]"))t[e.dataset.key]=e.value.trim();return t}var Y0=i=>Object.values(i).some(t=>t!=="");function Z0(i){let t=[...document.querySelectorAll("[data-answer]")].flatMap(s=>{let r=i.findings.find(a=>String(a.n)===s.dataset.answer),o=Fh(s);return Y0(o)?[{id:r.id,rule:r.rule,place:r.place??{},...o}]:[]}),e=[...document.querySelectorAll("[data-question]")].map(s=>({key:s.dataset.question,...Fh(s)})),n=[...document.querySelectorAll("[data-role]")].map(s=>({role:s.dataset.role,...Fh(s)}));return{document:"seamcheck-answers",schema_version:1,model:i.model,findings:t,questions:e.filter(s=>s.answer),approval:n.filter(s=>s.name||s.decision)}}function bf(i){fe("save-answers")?.addEventListener("click",()=>{let t=JSON.stringify(Z0(i),null,1),e=document.createElement("a");e.href=URL.createObjectURL(new Blob([t],{type:"application/json"})),e.download=`${i.model.file.replace(/\.[^.]*$/,"").replace(/[^A-Za-z0-9._-]+/g,"-")||"review"}-answers.json`,e.click(),URL.revokeObjectURL(e.href),fe("saved").textContent=yt("Saved as {file}.",{file:e.download})})}var J0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function Ha(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function Mf(i){let t=Ha(i);if(!J0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}function Ga(i){let t=new Uint8Array(Ha(i)),e=t.length/3,n=new Int32Array(e);for(let s=0;s<e;s++)n[s]=(t[3*s]|t[3*s+1]<<8|t[3*s+2]<<16)<<8>>8;return n}function Oh(i,t){for(let e=t;e<i.length;e++)i[e]=i[e-t]+i[e]<<8>>8;return i}var Sf=(i,t)=>Float32Array.from(i,e=>e*t),j0=8.9,Lr=class{offsets;segments;owner;slopes;shade;others;row=new Map;step;constructor(t){this.offsets=new Uint32Array(Mf(t.offsets)),this.segments=Sf(Ga(t.segments),t.step),this.owner=new Uint8Array(Ha(t.owner)),this.slopes=t.slope?[...new Float32Array(Mf(t.slope))]:t.stations.map(()=>0),this.shade=(t.shade??[]).map(([e,n,s,r,o,a,l,c,u])=>({station:e,low:n,high:s,share:r,u:o,v:a,along:l,part:c,leans:u})),this.others=t.others??[],t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}slope(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.slopes[n]}return 0}edgeOfCover(t){let e=0;return this.owner.forEach((n,s)=>{n===1&&(e=Math.max(e,t*this.segments[4*s],t*this.segments[4*s+2]))}),e<j0?e:0}shadeAt(t){return this.shade.filter(e=>e.station===t)}ownerOf(t){let e=this.others.indexOf(t);return e<0?void 0:e+2}partOf(t){return this.others[t-2]??null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function wf(i){return{part:i.part,positions:Sf(Oh(Ga(i.positions),3),i.step),triangles:new Uint32Array(Oh(Ga(i.triangles),1)),face:Oh(Ga(i.face),1),leftOut:i.left_out??0}}var Ef=i=>K0(i);async function K0(i){let t=new Blob([Ha(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var Wa=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":ss(0,e,0)[1]}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=this.payload.quantities[e],[s,,r]=ss(t,n?.unit??"",n?.decimals??3);return _i(s,r)}value(t,e){if(t==null||!Number.isFinite(t))return yt("not measured");if(e.startsWith("trap_open"))return t?yt("open"):yt("closed");let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:l}=o;if(a<=l?s>=a-1e-6&&s<=l+1e-6:s>=a-1e-6||s<=l+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},Dr={"must-fix":"◆",attention:"▲",note:"○"},Xa=i=>i.length>1?`${i[0].n}+${i.length-1}`:String(i[0].n);function Cs(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var $a=class{constructor(t){this.payload=t;this.words=new Wa(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new Lr(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(wf),this.unpacked}};var Q0="uplot",t_="u-hz",e_="u-vt",n_="u-title",i_="u-wrap",s_="u-under",r_="u-over",o_="u-axis",nr="u-off",a_="u-select",l_="u-cursor-x",c_="u-cursor-y",h_="u-cursor-pt",u_="u-legend",d_="u-live",f_="u-inline",p_="u-series",m_="u-marker",Tf="u-label",g_="u-value",Fo="width",Oo="height";var Af="bottom",Nr="left",Bh="right",eu="#000",Rf=eu+"0",kh="mousemove",Cf="mousedown",zh="mouseup",Pf="mouseenter",If="mouseleave",Lf="dblclick",__="resize",x_="scroll",Df="change",ja="dppxchange",nu="--",Vr=typeof window<"u",Xh=Vr?document:null,Fr=Vr?window:null,y_=Vr?navigator:null,Te,qa;function $h(){let i=devicePixelRatio;Te!=i&&(Te=i,qa&&Yh(Df,qa,$h),qa=matchMedia(`(min-resolution: ${Te-.001}dppx) and (max-resolution: ${Te+.001}dppx)`),ir(Df,qa,$h),Fr.dispatchEvent(new CustomEvent(ja)))}function oi(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function qh(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function We(i,t,e){i.style[t]=e+"px"}function Ti(i,t,e,n){let s=Xh.createElement(i);return t!=null&&oi(s,t),e?.insertBefore(s,n),s}function xi(i,t){return Ti("div",i,t)}var Nf=new WeakMap;function $i(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=Nf.get(i);r!=o&&(i.style.transform=r,Nf.set(i,r),t<0||e<0||t>n||e>s?oi(i,nr):qh(i,nr))}var Uf=new WeakMap;function Ff(i,t,e){let n=t+e,s=Uf.get(i);n!=s&&(Uf.set(i,n),i.style.background=t,i.style.borderColor=e)}var Of=new WeakMap;function Bf(i,t,e,n){let s=t+""+e,r=Of.get(i);s!=r&&(Of.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var iu={passive:!0},v_={...iu,capture:!0};function ir(i,t,e,n){t.addEventListener(i,e,n?v_:iu)}function Yh(i,t,e,n){t.removeEventListener(i,e,iu)}Vr&&$h();function Ai(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ai((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function dp(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var fp=i=>i!=null,pp=i=>i!=null&&i>0,tl=dp(fp),b_=dp(pp);function M_(i,t,e,n=0,s=!1){let r=s?b_:tl,o=s?pp:fp;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let u=i[c];o(u)&&(u<a?a=u:u>l&&(l=u))}return[a??Be,l??-Be]}function el(i,t,e,n){let s=Vf(i),r=Vf(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?rs:mp,a=s==1?ai:yi,l=r==1?yi:ai,c=a(o(xn(i))),u=l(o(xn(t))),h=Or(e,c),d=Or(e,u);return e==10&&(c<0&&(h=ke(h,-c)),u<0&&(d=ke(d,-u))),n||e==2?(i=h*s,t=d*r):(i=yp(i,h),t=nl(t,d)),[i,t]}function su(i,t,e,n){let s=el(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var ru=.1,kf={mode:3,pad:ru},ko={pad:0,soft:null,mode:0},S_={min:ko,max:ko};function Ka(i,t,e,n){return il(e)?zf(i,t,e):(ko.pad=e,ko.soft=n?0:null,ko.mode=n?3:0,zf(i,t,S_))}function we(i,t){return i??t}function w_(i,t,e){for(t=we(t,0),e=we(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function zf(i,t,e){let n=e.min,s=e.max,r=we(n.pad,0),o=we(s.pad,0),a=we(n.hard,-Be),l=we(s.hard,Be),c=we(n.soft,Be),u=we(s.soft,-Be),h=we(n.mode,0),d=we(s.mode,0),f=t-i,g=rs(f),_=qn(xn(i),xn(t)),p=rs(_),m=xn(p-g);(f<1e-24||m>10)&&(f=0,(i==0||t==0)&&(f=1e-24,h==2&&c!=Be&&(r=0),d==2&&u!=-Be&&(o=0)));let x=f||_||1e3,A=rs(x),b=Or(10,ai(A)),R=x*(f==0?i==0?.1:1:r),w=ke(yp(i-R,b/10),24),y=i>=c&&(h==1||h==3&&w<=c||h==2&&w>=c)?c:Be,M=qn(a,w<y&&i>=y?y:Ri(y,w)),z=x*(f==0?t==0?.1:1:o),F=ke(nl(t+z,b/10),24),P=t<=u&&(d==1||d==3&&F>=u||d==2&&F<=u)?u:-Be,L=Ri(l,F>P&&t<=P?P:qn(P,F));return M==L&&M==0&&(L=100),[M,L]}var E_=new Intl.NumberFormat(Vr?y_.language:"en-US"),ou=i=>E_.format(i),li=Math,Ja=li.PI,xn=li.abs,ai=li.floor,_n=li.round,yi=li.ceil,Ri=li.min,qn=li.max,Or=li.pow,Vf=li.sign,rs=li.log10,mp=li.log2,T_=(i,t=1)=>li.sinh(i)*t,Vh=(i,t=1)=>li.asinh(i/t),Be=1/0;function Gf(i){return(rs((i^i>>31)-(i>>31))|0)+1}function Zh(i,t,e){return Ri(qn(i,t),e)}function gp(i){return typeof i=="function"}function ve(i){return gp(i)?i:()=>i}var A_=()=>{},_p=i=>i,xp=(i,t)=>t,R_=i=>null,Hf=i=>!0,Wf=(i,t)=>i==t,C_=/\.\d*?(?=9{6,}|0{6,})/gm,sr=i=>{if(bp(i)||Is.has(i))return i;let t=`${i}`,e=t.match(C_);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${sr(s)}e${r}`}return ke(i,n)};function tr(i,t){return sr(ke(sr(i/t))*t)}function nl(i,t){return sr(yi(sr(i/t))*t)}function yp(i,t){return sr(ai(sr(i/t))*t)}function ke(i,t=0){if(bp(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return _n(n)/e}var Is=new Map;function vp(i){return((""+i).split(".")[1]||"").length}function Vo(i,t,e,n){let s=[],r=n.map(vp);for(let o=t;o<e;o++){let a=xn(o),l=ke(Or(i,o),a);for(let c=0;c<n.length;c++){let u=i==10?+`${n[c]}e${o}`:n[c]*l,h=(o>=0?0:a)+(o>=r[c]?0:r[c]),d=i==10?u:ke(u,h);s.push(d),Is.set(d,h)}}return s}var zo={},au=[],Br=[null,null],Ps=Array.isArray,bp=Number.isInteger,P_=i=>i===void 0;function Xf(i){return typeof i=="string"}function il(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function I_(i){return i!=null&&typeof i=="object"}var L_=Object.getPrototypeOf(Uint8Array),Mp="__proto__";function kr(i,t=il){let e;if(Ps(i)){let n=i.find(s=>s!=null);if(Ps(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=kr(i[s],t)}else e=i.slice()}else if(i instanceof L_)e=i.slice();else if(t(i)){e={};for(let n in i)n!=Mp&&(e[n]=kr(i[n],t))}else e=i;return e}function dn(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=Mp&&(il(i[s])?dn(i[s],kr(n[s])):i[s]=kr(n[s]))}return i}var D_=0,N_=1,U_=2;function F_(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function O_(i,t){if(z_(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return V_(o[0])||(o=k_(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let u=0;u<c;u++)e.add(l[u])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let u=a[c],h=Array(s).fill(void 0),d=t?t[o][c]:N_,f=[];for(let g=0;g<u.length;g++){let _=u[g],p=r.get(l[g]);_===null?d!=D_&&(h[p]=_,d==U_&&f.push(p)):h[p]=_}F_(h,f,s),n.push(h)}}return n}var B_=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function k_(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function z_(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function V_(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=qn(1,ai((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var Sp=["January","February","March","April","May","June","July","August","September","October","November","December"],wp=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Ep(i){return i.slice(0,3)}var G_=wp.map(Ep),H_=Sp.map(Ep),W_={MMMM:Sp,MMM:H_,WWWW:wp,WWW:G_};function Uo(i){return(i<10?"0":"")+i}function X_(i){return(i<10?"00":i<100?"0":"")+i}var $_={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Uo(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Uo(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Uo(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Uo(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Uo(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>X_(i.getMilliseconds())};function lu(i,t){t=t||W_;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?$_[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var q_=new Intl.DateTimeFormat().resolvedOptions().timeZone;function Y_(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==q_?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var Tp=i=>i%1==0,Qa=[1,2,2.5,5],Z_=Vo(10,-32,0,Qa),Ap=Vo(10,0,32,Qa),J_=Ap.filter(Tp),er=Z_.concat(Ap),cu=`
`,Rp="{YYYY}",$f=cu+Rp,Cp="{M}/{D}",Bo=cu+Cp,Ya=Bo+"/{YY}",Pp="{aa}",j_="{h}:{mm}",Ur=j_+Pp,qf=cu+Ur,Yf=":{ss}",Pe=null;function Ip(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Vo(10,0,3,Qa).filter(Tp):Vo(10,-3,0,Qa)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,Rp,Pe,Pe,Pe,Pe,Pe,Pe,1],[s*28,"{MMM}",$f,Pe,Pe,Pe,Pe,Pe,1],[s,Cp,$f,Pe,Pe,Pe,Pe,Pe,1],[n,"{h}"+Pp,Ya,Pe,Bo,Pe,Pe,Pe,1],[e,Ur,Ya,Pe,Bo,Pe,Pe,Pe,1],[t,Yf,Ya+" "+Ur,Pe,Bo+" "+Ur,Pe,qf,Pe,1],[i,Yf+".{fff}",Ya+" "+Ur,Pe,Bo+" "+Ur,Pe,qf,Pe,1]];function u(h){return(d,f,g,_,p,m)=>{let x=[],A=p>=o,b=p>=r&&p<o,R=h(g),w=ke(R*i,3),y=Gh(R.getFullYear(),A?0:R.getMonth(),b||A?1:R.getDate()),M=ke(y*i,3);if(b||A){let z=b?p/r:0,F=A?p/o:0,P=w==M?w:ke(Gh(y.getFullYear()+F,y.getMonth()+z,1)*i,3),L=new Date(_n(P/i)),U=L.getFullYear(),C=L.getMonth();for(let O=0;P<=_;O++){let H=Gh(U+F*O,C+z*O,1),B=H-h(ke(H*i,3));P=ke((+H+B)*i,3),P<=_&&x.push(P)}}else{let z=p>=s?s:p,F=ai(g)-ai(w),P=M+F+nl(w-M,z);x.push(P);let L=h(P),U=L.getHours()+L.getMinutes()/e+L.getSeconds()/n,C=p/n,O=d.axes[f]._space,H=m/O;for(;P=ke(P+p,i==1?0:3),!(P>_);)if(C>1){let B=ai(ke(U+C,6))%24,J=h(P).getHours()-B;J>1&&(J=-1),P-=J*n,U=(U+C)%24;let et=x[x.length-1];ke((P-et)/p,3)*H>=.7&&x.push(P)}else x.push(P)}return x}}return[l,c,u]}var[K_,Q_,tx]=Ip(1),[ex,nx,ix]=Ip(.001);Vo(2,-53,53,[1]);function Zf(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function Jf(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,u,h,d,f;return n.map(g=>{let _=i(g),p=_.getFullYear(),m=_.getMonth(),x=_.getDate(),A=_.getHours(),b=_.getMinutes(),R=_.getSeconds(),w=p!=l&&a[2]||m!=c&&a[3]||x!=u&&a[4]||A!=h&&a[5]||b!=d&&a[6]||R!=f&&a[7]||a[1];return l=p,c=m,u=x,h=A,d=b,f=R,w(_)})}}function sx(i,t){let e=lu(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function Gh(i,t,e){return new Date(i,t,e)}function jf(i,t){return t(i)}var rx="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Kf(i,t){return(e,n,s,r)=>r==null?nu:t(i(n))}function ox(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function ax(i,t){return i.series[t].fill(i,t)}var lx={show:!0,live:!0,isolate:!1,mount:A_,markers:{show:!0,width:2,stroke:ox,fill:ax,dash:"solid"},idx:null,idxs:null,values:[]};function cx(i,t){let e=i.cursor.points,n=xi(),s=e.size(i,t);We(n,Fo,s),We(n,Oo,s);let r=s/-2;We(n,"marginLeft",r),We(n,"marginTop",r);let o=e.width(i,t,s);return o&&We(n,"borderWidth",o),n}function hx(i,t){let e=i.series[t].points;return e._fill||e._stroke}function ux(i,t){let e=i.series[t].points;return e._stroke||e._fill}function dx(i,t){return i.series[t].points.size}var Hh=[0,0];function fx(i,t,e){return Hh[0]=t,Hh[1]=e,Hh}function Za(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Wh(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var px={show:!0,x:!0,y:!0,lock:!1,move:fx,points:{one:!1,show:cx,size:dx,width:0,stroke:ux,fill:hx},bind:{mousedown:Za,mouseup:Za,click:Za,dblclick:Za,mousemove:Wh,mouseleave:Wh,mouseenter:Wh},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Lp={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},hu=dn({},Lp,{filter:xp}),Dp=dn({},hu,{size:10}),Np=dn({},Lp,{show:!1}),uu='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',Up="bold "+uu,Fp=1.5,Qf={show:!0,scale:"x",stroke:eu,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Up,side:2,grid:hu,ticks:Dp,border:Np,font:uu,lineGap:Fp,rotate:0},mx="Value",gx="Time",tp={show:!0,scale:"x",auto:!1,sorted:1,min:Be,max:-Be,idxs:[]};function _x(i,t,e,n,s){return t.map(r=>r==null?"":ou(r))}function xx(i,t,e,n,s,r,o){let a=[],l=Is.get(s)||0;e=o?e:ke(nl(e,s),l);for(let c=e;c<=n;c=ke(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Jh(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?rs:mp,u=ai(c(e));s=Or(l,u),l==10&&(s=er[Ai(s,er)]);let h=e,d=s*l;l==10&&(d=er[Ai(d,er)]);do a.push(h),h=h+s,l==10&&!Is.has(h)&&(h=ke(h,Is.get(s))),h>=d&&(s=h,d=s*l,l==10&&(d=er[Ai(d,er)]));while(h<=n);return a}function yx(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Jh(i,t,qn(l,e),n,s):[l],u=n>=0&&e<=0?[0]:[];return(e<-l?Jh(i,t,qn(l,-n),-e,s):[l]).reverse().map(d=>-d).concat(u,c)}var Op=/./,vx=/[12357]/,bx=/[125]/,ep=/1/,jh=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function Mx(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,u=l(10,o),h=l(9,o)-u>=c?Op:l(7,o)-u>=c?vx:l(5,o)-u>=c?bx:ep;if(h==ep){let d=xn(l(1,o)-u);if(d<c)return jh(t.slice().reverse(),a.distr,h,yi(c/d)).reverse()}return jh(t,a.distr,h,1)}function Sx(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=xn(l(1,o)-l(2,o));return c<a?jh(t.slice().reverse(),3,Op,yi(a/c)).reverse():t}function wx(i,t,e,n){return n==null?nu:t==null?"":ou(t)}var np={show:!0,scale:"y",stroke:eu,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Up,side:3,grid:hu,ticks:Dp,border:Np,font:uu,lineGap:Fp,rotate:0};function Ex(i,t){let e=3+(i||1)*2;return ke(e*t,3)}function Tx(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=xn(o-r),l=i.series[t],c=a/(l.points.space*Te);return n[1]-n[0]<=c}var ip={scale:null,auto:!0,sorted:0,min:Be,max:-Be},Bp=(i,t,e,n,s)=>s,sp={show:!0,auto:!0,sorted:0,gaps:Bp,alpha:1,facets:[dn({},ip,{scale:"x"}),dn({},ip,{scale:"y"})]},rp={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:Bp,alpha:1,points:{show:Tx,filter:null},values:null,min:Be,max:-Be,idxs:[],path:null,clip:null};function Ax(i,t,e,n,s){return e/10}var kp={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},Rx=dn({},kp,{time:!1,ori:1}),op={};function zp(i,t){let e=op[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let u=0;u<e.plots.length;u++)e.plots[u]!=s&&e.plots[u].pub(n,s,r,o,a,l,c)}},i!=null&&(op[i]=e)),e}var zr=1,Kh=2;function rr(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],u=n==2?o[s.facets[0].scale]:o[i.series[0].scale],h=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,_=a.height,p=i.valToPosH,m=i.valToPosV;return u.ori==0?e(s,l,c,u,h,p,m,d,f,g,_,rl,Gr,al,Gp,Wp):e(s,l,c,u,h,m,p,f,d,_,g,ol,Hr,pu,Hp,Xp)}function du(i,t){let e=0,n=0,s=we(i.bands,au);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function Cx(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function os(i,t,e,n,s,r){return rr(i,t,(o,a,l,c,u,h,d,f,g,_,p)=>{let m=o.pxRound,x=c.dir*(c.ori==0?1:-1),A=c.ori==0?Gr:Hr,b,R;x==1?(b=e,R=n):(b=n,R=e);let w=m(h(a[b],c,_,f)),y=m(d(l[b],u,p,g)),M=m(h(a[R],c,_,f)),z=m(d(r==1?u.max:u.min,u,p,g)),F=new Path2D(s);return A(F,M,z),A(F,w,z),A(F,w,y),F})}function sl(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?al:pu,l=e;for(let h=0;h<i.length;h++){let d=i[h];if(d[1]>d[0]){let f=d[0]-l;f>0&&a(o,l,n,f,n+r),l=d[1]}}let c=e+s-l,u=10;c>0&&a(o,l,n-u/2,c,n+r+u)}return o}function Px(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function fu(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let h=c,d=c;if(s==1)for(;++c<=n&&t[c]===null;)d=c;else for(;--c>=e&&t[c]===null;)d=c;let f=r(i[h]),g=d==h?f:r(i[d]),_=h-s;f=o<=0&&_>=0&&_<l?r(i[_]):f;let m=d+s;g=o>=0&&m>=0&&m<l?r(i[m]):g,g>=f&&a.push([f,g])}return a}function ap(i){return i==0?_p:i==1?_n:t=>tr(t,i)}function Vp(i){let t=i==0?rl:ol,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,u=0)=>{c==0&&u==0?n(s,r,o,a,l):(c=Ri(c,a/2,l/2),u=Ri(u,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,u),e(s,r,o+l,r,o,u),e(s,r,o,r+a,o,c),s.closePath())}}var rl=(i,t,e)=>{i.moveTo(t,e)},ol=(i,t,e)=>{i.moveTo(e,t)},Gr=(i,t,e)=>{i.lineTo(t,e)},Hr=(i,t,e)=>{i.lineTo(e,t)},al=Vp(0),pu=Vp(1),Gp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},Hp=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},Wp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},Xp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function $p(i){return(t,e,n,s,r)=>rr(t,e,(o,a,l,c,u,h,d,f,g,_,p)=>{let{pxRound:m,points:x}=o,A,b;c.ori==0?(A=rl,b=Gp):(A=ol,b=Hp);let R=ke(x.width*Te,3),w=(x.size-x.width)/2*Te,y=ke(w*2,3),M=new Path2D,z=new Path2D,{left:F,top:P,width:L,height:U}=t.bbox;al(z,F-y,P-y,L+y*2,U+y*2);let C=O=>{if(l[O]!=null){let H=m(h(a[O],c,_,f)),B=m(d(l[O],u,p,g));A(M,H+w,B),b(M,H,B,w,0,Ja*2)}};if(r)r.forEach(C);else for(let O=n;O<=s;O++)C(O);return{stroke:R>0?M:null,fill:M,clip:z,flags:zr|Kh}})}function qp(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var Ix=qp(Gr),Lx=qp(Hr);function Yp(i){let t=we(i?.alignGaps,0);return(e,n,s,r)=>rr(e,n,(o,a,l,c,u,h,d,f,g,_,p)=>{[s,r]=tl(l,s,r);let m=o.pxRound,x=U=>m(h(U,c,_,f)),A=U=>m(d(U,u,p,g)),b,R;c.ori==0?(b=Gr,R=Ix):(b=Hr,R=Lx);let w=c.dir*(c.ori==0?1:-1),y={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:zr},M=y.stroke,z=!1;if(r-s>=_*4){let U=lt=>e.posToVal(lt,c.key,!0),C=null,O=null,H,B,st,X=x(a[w==1?s:r]),J=x(a[s]),et=x(a[r]),ft=U(w==1?J+1:et-1);for(let lt=w==1?s:r;lt>=s&&lt<=r;lt+=w){let K=a[lt],rt=(w==1?K<ft:K>ft)?X:x(K),_t=l[lt];rt==X?_t!=null?(B=_t,C==null?(b(M,rt,A(B)),H=C=O=B):B<C?C=B:B>O&&(O=B)):_t===null&&(z=!0):(C!=null&&R(M,X,A(C),A(O),A(H),A(B)),_t!=null?(B=_t,b(M,rt,A(B)),C=O=H=B):(C=O=null,_t===null&&(z=!0)),X=rt,ft=U(X+w))}C!=null&&C!=O&&st!=X&&R(M,X,A(C),A(O),A(H),A(B))}else for(let U=w==1?s:r;U>=s&&U<=r;U+=w){let C=l[U];C===null?z=!0:C!=null&&b(M,x(a[U]),A(C))}let[P,L]=du(e,n);if(o.fill!=null||P!=0){let U=y.fill=new Path2D(M),C=o.fillTo(e,n,o.min,o.max,P),O=A(C),H=x(a[s]),B=x(a[r]);w==-1&&([B,H]=[H,B]),b(U,B,O),b(U,H,O)}if(!o.spanGaps){let U=[];z&&U.push(...fu(a,l,s,r,w,x,t)),y.gaps=U=o.gaps(e,n,s,r,U),y.clip=sl(U,c.ori,f,g,_,p)}return L!=0&&(y.band=L==2?[os(e,n,s,r,M,-1),os(e,n,s,r,M,1)]:os(e,n,s,r,M,L)),y})}function Dx(i){let t=we(i.align,1),e=we(i.ascDesc,!1),n=we(i.alignGaps,0),s=we(i.extend,!1);return(r,o,a,l)=>rr(r,o,(c,u,h,d,f,g,_,p,m,x,A)=>{[a,l]=tl(h,a,l);let b=c.pxRound,{left:R,width:w}=r.bbox,y=J=>b(g(J,d,x,p)),M=J=>b(_(J,f,A,m)),z=d.ori==0?Gr:Hr,F={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:zr},P=F.stroke,L=d.dir*(d.ori==0?1:-1),U=M(h[L==1?a:l]),C=y(u[L==1?a:l]),O=C,H=C;s&&t==-1&&(H=R,z(P,H,U)),z(P,C,U);for(let J=L==1?a:l;J>=a&&J<=l;J+=L){let et=h[J];if(et==null)continue;let ft=y(u[J]),lt=M(et);t==1?z(P,ft,U):z(P,O,lt),z(P,ft,lt),U=lt,O=ft}let B=O;s&&t==1&&(B=R+w,z(P,B,U));let[st,X]=du(r,o);if(c.fill!=null||st!=0){let J=F.fill=new Path2D(P),et=c.fillTo(r,o,c.min,c.max,st),ft=M(et);z(J,B,ft),z(J,H,ft)}if(!c.spanGaps){let J=[];J.push(...fu(u,h,a,l,L,y,n));let et=c.width*Te/2,ft=e||t==1?et:-et,lt=e||t==-1?-et:et;J.forEach(K=>{K[0]+=ft,K[1]+=lt}),F.gaps=J=c.gaps(r,o,a,l,J),F.clip=sl(J,d.ori,p,m,x,A)}return X!=0&&(F.band=X==2?[os(r,o,a,l,P,-1),os(r,o,a,l,P,1)]:os(r,o,a,l,P,X)),F})}function lp(i,t,e,n,s,r,o=Be){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let u=xn(i[l]-i[a]);u<c&&(c=u,o=xn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function Nx(i){i=i||zo;let t=we(i.size,[.6,Be,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=ve(s),o=1-t[0],a=we(t[1],Be),l=we(t[2],1),c=we(i.disp,zo),u=we(i.each,f=>{}),{fill:h,stroke:d}=c;return(f,g,_,p)=>rr(f,g,(m,x,A,b,R,w,y,M,z,F,P)=>{let L=m.pxRound,U=e,C=n*Te,O=a*Te,H=l*Te,B,st;b.ori==0?[B,st]=r(f,g):[st,B]=r(f,g);let X=b.dir*(b.ori==0?1:-1),J=b.ori==0?al:pu,et=b.ori==0?u:(Dt,jt,ce,At,Oe,Xt,Zt)=>{u(Dt,jt,ce,Oe,At,Zt,Xt)},ft=we(f.bands,au).find(Dt=>Dt.series[0]==g),lt=ft!=null?ft.dir:0,K=m.fillTo(f,g,m.min,m.max,lt),dt=L(y(K,R,P,z)),rt,_t,xt,gt=F,It=L(m.width*Te),Ut=!1,ee=null,he=null,ne=null,Re=null;h!=null&&(It==0||d!=null)&&(Ut=!0,ee=h.values(f,g,_,p),he=new Map,new Set(ee).forEach(Dt=>{Dt!=null&&he.set(Dt,new Path2D)}),It>0&&(ne=d.values(f,g,_,p),Re=new Map,new Set(ne).forEach(Dt=>{Dt!=null&&Re.set(Dt,new Path2D)})));let{x0:Ce,size:on}=c;if(Ce!=null&&on!=null){U=1,x=Ce.values(f,g,_,p),Ce.unit==2&&(x=x.map(ce=>f.posToVal(M+ce*F,b.key,!0)));let Dt=on.values(f,g,_,p);on.unit==2?_t=Dt[0]*F:_t=w(Dt[0],b,F,M)-w(0,b,F,M),gt=lp(x,A,w,b,F,M,gt),xt=gt-_t+C}else gt=lp(x,A,w,b,F,M,gt),xt=gt*o+C,_t=gt-xt;xt<1&&(xt=0),It>=_t/2&&(It=0),xt<5&&(L=_p);let Ue=xt>0,Mn=gt-xt-(Ue?It:0);_t=L(Zh(Mn,H,O)),rt=(U==0?_t/2:U==X?0:_t)-U*X*((U==0?C/2:0)+(Ue?It/2:0));let Me={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},mn=Ut?null:new Path2D,Je=null;if(ft!=null)Je=f.data[ft.series[1]];else{let{y0:Dt,y1:jt}=c;Dt!=null&&jt!=null&&(A=jt.values(f,g,_,p),Je=Dt.values(f,g,_,p))}let an=B*_t,V=st*_t;for(let Dt=X==1?_:p;Dt>=_&&Dt<=p;Dt+=X){let jt=A[Dt];if(jt==null)continue;if(Je!=null){let Y=Je[Dt]??0;if(jt-Y==0)continue;dt=y(Y,R,P,z)}let ce=b.distr!=2||c!=null?x[Dt]:Dt,At=w(ce,b,F,M),Oe=y(we(jt,K),R,P,z),Xt=L(At-rt),Zt=L(qn(Oe,dt)),I=L(Ri(Oe,dt)),S=Zt-I;if(jt!=null){let Y=jt<0?V:an,mt=jt<0?an:V;Ut?(It>0&&ne[Dt]!=null&&J(Re.get(ne[Dt]),Xt,I+ai(It/2),_t,qn(0,S-It),Y,mt),ee[Dt]!=null&&J(he.get(ee[Dt]),Xt,I+ai(It/2),_t,qn(0,S-It),Y,mt)):J(mn,Xt,I+ai(It/2),_t,qn(0,S-It),Y,mt),et(f,g,Dt,Xt-It/2,I,_t+It,S)}}return It>0?Me.stroke=Ut?Re:mn:Ut||(Me._fill=m.width==0?m._fill:m._stroke??m._fill,Me.width=0),Me.fill=Ut?he:mn,Me})}function Ux(i,t){let e=we(t?.alignGaps,0);return(n,s,r,o)=>rr(n,s,(a,l,c,u,h,d,f,g,_,p,m)=>{[r,o]=tl(c,r,o);let x=a.pxRound,A=B=>x(d(B,u,p,g)),b=B=>x(f(B,h,m,_)),R,w,y;u.ori==0?(R=rl,y=Gr,w=Wp):(R=ol,y=Hr,w=Xp);let M=u.dir*(u.ori==0?1:-1),z=A(l[M==1?r:o]),F=z,P=[],L=[];for(let B=M==1?r:o;B>=r&&B<=o;B+=M)if(c[B]!=null){let X=l[B],J=A(X);P.push(F=J),L.push(b(c[B]))}let U={stroke:i(P,L,R,y,w,x),fill:null,clip:null,band:null,gaps:null,flags:zr},C=U.stroke,[O,H]=du(n,s);if(a.fill!=null||O!=0){let B=U.fill=new Path2D(C),st=a.fillTo(n,s,a.min,a.max,O),X=b(st);y(B,F,X),y(B,z,X)}if(!a.spanGaps){let B=[];B.push(...fu(l,c,r,o,M,A,e)),U.gaps=B=a.gaps(n,s,r,o,B),U.clip=sl(B,u.ori,g,_,p,m)}return H!=0&&(U.band=H==2?[os(n,s,r,o,C,-1),os(n,s,r,o,C,1)]:os(n,s,r,o,C,H)),U})}function Fx(i){return Ux(Ox,i)}function Ox(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),u=Array(o-1),h=Array(o-1);for(let d=0;d<o-1;d++)u[d]=t[d+1]-t[d],h[d]=i[d+1]-i[d],c[d]=u[d]/h[d];l[0]=c[0];for(let d=1;d<o-1;d++)c[d]===0||c[d-1]===0||c[d-1]>0!=c[d]>0?l[d]=0:(l[d]=3*(h[d-1]+h[d])/((2*h[d]+h[d-1])/c[d-1]+(h[d]+2*h[d-1])/c[d]),isFinite(l[d])||(l[d]=0));l[o-1]=c[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+h[d]/3,t[d]+l[d]*h[d]/3,i[d+1]-h[d]/3,t[d+1]-l[d+1]*h[d]/3,i[d+1],t[d+1])}return a}var Qh=new Set;function cp(){for(let i of Qh)i.syncRect(!0)}Vr&&(ir(__,Fr,cp),ir(x_,Fr,cp,!0),ir(ja,Fr,()=>{An.pxRatio=Te}));var Bx=Yp(),kx=$p();function hp(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>tu(r,o,t,e))}function zx(i,t){return i.map((e,n)=>n==0?{}:dn({},t,e))}function tu(i,t,e,n){return dn({},t==0?e:n,i)}function Zp(i,t,e){return t==null?Br:[t,e]}var Vx=Zp;function Gx(i,t,e){return t==null?Br:Ka(t,e,ru,!0)}function Jp(i,t,e,n){return t==null?Br:el(t,e,i.scales[n].log,!1)}var Hx=Jp;function jp(i,t,e,n){return t==null?Br:su(t,e,i.scales[n].log,!1)}var Wx=jp;function Xx(i,t,e,n,s){let r=qn(Gf(i),Gf(t)),o=t-i,a=Ai(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Is.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function up(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=_n((e=+s)*Te))+"px"),[i,t,e]}function $x(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=ke(t[2]*Te,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function An(i,t,e){let n={mode:we(i.mode,1)},s=n.mode;function r(v,E,D,N){let W=E.valToPct(v);return N+D*(E.dir==-1?1-W:W)}function o(v,E,D,N){let W=E.valToPct(v);return N+D*(E.dir==-1?W:1-W)}function a(v,E,D,N){return E.ori==0?r(v,E,D,N):o(v,E,D,N)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=xi(Q0);if(i.id!=null&&(c.id=i.id),oi(c,i.class),i.title){let v=xi(n_,c);v.textContent=i.title}let u=Ti("canvas"),h=n.ctx=u.getContext("2d"),d=xi(i_,c);ir("click",d,v=>{v.target===g&&(Ve!=Ar||qe!=Rr)&&In.click(n,v)},!0);let f=n.under=xi(s_,d);d.appendChild(u);let g=n.over=xi(r_,d);i=kr(i);let _=+we(i.pxAlign,1),p=ap(_);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let m=i.ms||.001,x=n.series=s==1?hp(i.series||[],tp,rp,!1):zx(i.series||[null],sp),A=n.axes=hp(i.axes||[],Qf,np,!0),b=n.scales={},R=n.bands=i.bands||[];R.forEach(v=>{v.fill=ve(v.fill||null),v.dir=we(v.dir,-1)});let w=s==2?x[1].facets[0].scale:x[0].scale,y={axes:ns,series:ge},M=(i.drawOrder||["axes","series"]).map(v=>y[v]);function z(v){let E=v.distr==3?D=>rs(D>0?D:v.clamp(n,D,v.min,v.max,v.key)):v.distr==4?D=>Vh(D,v.asinh):v.distr==100?D=>v.fwd(D):D=>D;return D=>{let N=E(D),{_min:W,_max:Q}=v,ht=Q-W;return(N-W)/ht}}function F(v){let E=b[v];if(E==null){let D=(i.scales||zo)[v]||zo;if(D.from!=null){F(D.from);let N=dn({},b[D.from],D,{key:v});N.valToPct=z(N),b[v]=N}else{E=b[v]=dn({},v==w?kp:Rx,D),E.key=v;let N=E.time,W=E.range,Q=Ps(W);if((v!=w||s==2&&!N)&&(Q&&(W[0]==null||W[1]==null)&&(W={min:W[0]==null?kf:{mode:1,hard:W[0],soft:W[0]},max:W[1]==null?kf:{mode:1,hard:W[1],soft:W[1]}},Q=!1),!Q&&il(W))){let ht=W;W=(vt,Et,Bt)=>Et==null?Br:Ka(Et,Bt,ht)}E.range=ve(W||(N?Vx:v==w?E.distr==3?Hx:E.distr==4?Wx:Zp:E.distr==3?Jp:E.distr==4?jp:Gx)),E.auto=ve(Q?!1:E.auto),E.clamp=ve(E.clamp||Ax),E._min=E._max=null,E.valToPct=z(E)}}}F("x"),F("y"),s==1&&x.forEach(v=>{F(v.scale)}),A.forEach(v=>{F(v.scale)});for(let v in i.scales)F(v);let P=b[w],L=P.distr,U,C;P.ori==0?(oi(c,t_),U=r,C=o):(oi(c,e_),U=o,C=r);let O={};for(let v in b){let E=b[v];(E.min!=null||E.max!=null)&&(O[v]={min:E.min,max:E.max},E.min=E.max=null)}let H=i.tzDate||(v=>new Date(_n(v/m))),B=i.fmtDate||lu,st=m==1?tx(H):ix(H),X=Jf(H,Zf(m==1?Q_:nx,B)),J=Kf(H,jf(rx,B)),et=[],ft=n.legend=dn({},lx,i.legend),lt=n.cursor=dn({},px,{drag:{y:s==2}},i.cursor),K=ft.show,dt=lt.show,rt=ft.markers;ft.idxs=et,rt.width=ve(rt.width),rt.dash=ve(rt.dash),rt.stroke=ve(rt.stroke),rt.fill=ve(rt.fill);let _t,xt,gt,It=[],Ut=[],ee,he=!1,ne={};if(ft.live){let v=x[1]?x[1].values:null;he=v!=null,ee=he?v(n,1,0):{_:0};for(let E in ee)ne[E]=nu}if(K)if(_t=Ti("table",u_,c),gt=Ti("tbody",null,_t),ft.mount(n,_t),he){xt=Ti("thead",null,_t,gt);let v=Ti("tr",null,xt);Ti("th",null,v);for(var Re in ee)Ti("th",Tf,v).textContent=Re}else oi(_t,f_),ft.live&&oi(_t,d_);let Ce={show:!0},on={show:!1};function Ue(v,E){if(E==0&&(he||!ft.live||s==2))return Br;let D=[],N=Ti("tr",p_,gt,gt.childNodes[E]);oi(N,v.class),v.show||oi(N,nr);let W=Ti("th",null,N);if(rt.show){let vt=xi(m_,W);if(E>0){let Et=rt.width(n,E);Et&&(vt.style.border=Et+"px "+rt.dash(n,E)+" "+rt.stroke(n,E)),vt.style.background=rt.fill(n,E)}}let Q=xi(Tf,W);v.label instanceof HTMLElement?Q.appendChild(v.label):Q.textContent=v.label,E>0&&(rt.show||(Q.style.color=v.width>0?rt.stroke(n,E):rt.fill(n,E)),Me("click",W,vt=>{if(lt._lock)return;Qt(vt);let Et=x.indexOf(v);if((vt.ctrlKey||vt.metaKey)!=ft.isolate){let Bt=x.some((kt,Vt)=>Vt>0&&Vt!=Et&&kt.show);x.forEach((kt,Vt)=>{Vt>0&&Gi(Vt,Bt?Vt==Et?Ce:on:Ce,!0,un.setSeries)})}else Gi(Et,{show:!v.show},!0,un.setSeries)},!1),te&&Me(Pf,W,vt=>{lt._lock||(Qt(vt),Gi(x.indexOf(v),Pr,!0,un.setSeries))},!1));for(var ht in ee){let vt=Ti("td",g_,N);vt.textContent="--",D.push(vt)}return[N,D]}let Mn=new Map;function Me(v,E,D,N=!0){let W=Mn.get(E)||{},Q=lt.bind[v](n,E,D,N);Q&&(ir(v,E,W[v]=Q),Mn.set(E,W))}function mn(v,E,D){let N=Mn.get(E)||{};for(let W in N)(v==null||W==v)&&(Yh(W,E,N[W]),delete N[W]);v==null&&Mn.delete(E)}let Je=0,an=0,V=0,Dt=0,jt=0,ce=0,At=jt,Oe=ce,Xt=V,Zt=Dt,I=0,S=0,Y=0,mt=0;n.bbox={};let ct=!1,St=!1,wt=!1,nt=!1,ot=!1,bt=!1;function k(v,E,D){(D||v!=n.width||E!=n.height)&&at(v,E),de(!1),wt=!0,St=!0,Un()}function at(v,E){n.width=Je=V=v,n.height=an=Dt=E,jt=ce=0,Tt(),$t();let D=n.bbox;I=D.left=tr(jt*Te,.5),S=D.top=tr(ce*Te,.5),Y=D.width=tr(V*Te,.5),mt=D.height=tr(Dt*Te,.5)}let it=3;function Rt(){let v=!1,E=0;for(;!v;){E++;let D=wr(E),N=Vi(E);v=E==it||D&&N,v||(at(n.width,n.height),St=!0)}}function Mt({width:v,height:E}){k(v,E)}n.setSize=Mt;function Tt(){let v=!1,E=!1,D=!1,N=!1;A.forEach((W,Q)=>{if(W.show&&W._show){let{side:ht,_size:vt}=W,Et=ht%2,Bt=W.label!=null?W.labelSize:0,kt=vt+Bt;kt>0&&(Et?(V-=kt,ht==3?(jt+=kt,N=!0):D=!0):(Dt-=kt,ht==0?(ce+=kt,v=!0):E=!0))}}),ki[0]=v,ki[1]=D,ki[2]=E,ki[3]=N,V-=Mi[1]+Mi[3],jt+=Mi[3],Dt-=Mi[2]+Mi[0],ce+=Mi[0]}function $t(){let v=jt+V,E=ce+Dt,D=jt,N=ce;function W(Q,ht){switch(Q){case 1:return v+=ht,v-ht;case 2:return E+=ht,E-ht;case 3:return D-=ht,D+ht;case 0:return N-=ht,N+ht}}A.forEach((Q,ht)=>{if(Q.show&&Q._show){let vt=Q.side;Q._pos=W(vt,Q._size),Q.label!=null&&(Q._lpos=W(vt,Q.labelSize))}})}if(lt.dataIdx==null){let v=lt.hover,E=v.skip=new Set(v.skip??[]);E.add(void 0);let D=v.prox=ve(v.prox),N=v.bias??=0;lt.dataIdx=(W,Q,ht,vt)=>{if(Q==0)return ht;let Et=ht,Bt=D(W,Q,ht,vt)??Be,kt=Bt>=0&&Bt<Be,Vt=P.ori==0?V:Dt,ae=lt.left,Ee=t[0],Se=t[Q];if(E.has(Se[ht])){Et=null;let xe=null,Kt=null,Yt;if(N==0||N==-1)for(Yt=ht;xe==null&&Yt-- >0;)E.has(Se[Yt])||(xe=Yt);if(N==0||N==1)for(Yt=ht;Kt==null&&Yt++<Se.length;)E.has(Se[Yt])||(Kt=Yt);if(xe!=null||Kt!=null)if(kt){let He=xe==null?-1/0:U(Ee[xe],P,Vt,0),Qe=Kt==null?1/0:U(Ee[Kt],P,Vt,0),Tn=ae-He,Fe=Qe-ae;Tn<=Fe?Tn<=Bt&&(Et=xe):Fe<=Bt&&(Et=Kt)}else Et=Kt==null?xe:xe==null?Kt:ht-xe<=Kt-ht?xe:Kt}else kt&&xn(ae-U(Ee[ht],P,Vt,0))>Bt&&(Et=null);return Et}}let Qt=v=>{lt.event=v};lt.idxs=et,lt._lock=!1;let pt=lt.points;pt.show=ve(pt.show),pt.size=ve(pt.size),pt.stroke=ve(pt.stroke),pt.width=ve(pt.width),pt.fill=ve(pt.fill);let Gt=n.focus=dn({},i.focus||{alpha:.3},lt.focus),te=Gt.prox>=0,Lt=te&&pt.one,ue=[],ze=[],Gn=[];function wo(v,E){let D=pt.show(n,E);if(D instanceof HTMLElement)return oi(D,h_),oi(D,v.class),$i(D,-10,-10,V,Dt),g.insertBefore(D,ue[E]),D}function br(v,E){if(s==1||E>0){let D=s==1&&b[v.scale].time,N=v.value;v.value=D?Xf(N)?Kf(H,jf(N,B)):N||J:N||wx,v.label=v.label||(D?gx:mx)}if(Lt||E>0){v.width=v.width==null?1:v.width,v.paths=v.paths||Bx||R_,v.fillTo=ve(v.fillTo||Cx),v.pxAlign=+we(v.pxAlign,_),v.pxRound=ap(v.pxAlign),v.stroke=ve(v.stroke||null),v.fill=ve(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let D=Ex(qn(1,v.width),1),N=v.points=dn({},{size:D,width:qn(1,D*.2),stroke:v.stroke,space:D*2,paths:kx,_stroke:null,_fill:null},v.points);N.show=ve(N.show),N.filter=ve(N.filter),N.fill=ve(N.fill),N.stroke=ve(N.stroke),N.paths=ve(N.paths),N.pxAlign=v.pxAlign}if(K){let D=Ue(v,E);It.splice(E,0,D[0]),Ut.splice(E,0,D[1]),ft.values.push(null)}if(dt){et.splice(E,0,null);let D=null;Lt?E==0&&(D=wo(v,E)):E>0&&(D=wo(v,E)),ue.splice(E,0,D),ze.splice(E,0,0),Gn.splice(E,0,0)}En("addSeries",E)}function Th(v,E){E=E??x.length,v=s==1?tu(v,E,tp,rp):tu(v,E,{},sp),x.splice(E,0,v),br(x[E],E)}n.addSeries=Th;function Ba(v){if(x.splice(v,1),K){ft.values.splice(v,1),Ut.splice(v,1);let E=It.splice(v,1)[0];mn(null,E.firstChild),E.remove()}dt&&(et.splice(v,1),ue.splice(v,1)[0].remove(),ze.splice(v,1),Gn.splice(v,1)),En("delSeries",v)}n.delSeries=Ba;let ki=[!1,!1,!1,!1];function Qi(v,E){if(v._show=v.show,v.show){let D=v.side%2,N=b[v.scale];N==null&&(v.scale=D?x[1].scale:w,N=b[v.scale]);let W=N.time;v.size=ve(v.size),v.space=ve(v.space),v.rotate=ve(v.rotate),Ps(v.incrs)&&v.incrs.forEach(ht=>{!Is.has(ht)&&Is.set(ht,vp(ht))}),v.incrs=ve(v.incrs||(N.distr==2?J_:W?m==1?K_:ex:er)),v.splits=ve(v.splits||(W&&N.distr==1?st:N.distr==3?Jh:N.distr==4?yx:xx)),v.stroke=ve(v.stroke),v.grid.stroke=ve(v.grid.stroke),v.ticks.stroke=ve(v.ticks.stroke),v.border.stroke=ve(v.border.stroke);let Q=v.values;v.values=Ps(Q)&&!Ps(Q[0])?ve(Q):W?Ps(Q)?Jf(H,Zf(Q,B)):Xf(Q)?sx(H,Q):Q||X:Q||_x,v.filter=ve(v.filter||(N.distr>=3&&N.log==10?Mx:N.distr==3&&N.log==2?Sx:xp)),v.font=up(v.font),v.labelFont=up(v.labelFont),v._size=v.size(n,null,E,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(ki[E]=!0,v._el=xi(o_,d))}}function ts(v,E,D,N){let[W,Q,ht,vt]=D,Et=E%2,Bt=0;return Et==0&&(vt||Q)&&(Bt=E==0&&!W||E==2&&!ht?_n(Qf.size/3):0),Et==1&&(W||ht)&&(Bt=E==1&&!Q||E==3&&!vt?_n(np.size/2):0),Bt}let Eo=n.padding=(i.padding||[ts,ts,ts,ts]).map(v=>ve(we(v,ts))),Mi=n._padding=Eo.map((v,E)=>v(n,E,ki,0)),je,nn=null,sn=null,zi=s==1?x[0].idxs:null,ni=null,Ms=!1;function To(v,E){if(t=v??[],n.data=n._data=t,s==2){je=0;for(let D=1;D<x.length;D++)je+=t[D][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ni=t[0],je=ni.length;let D=t;if(L==2){D=t.slice();let N=D[0]=Array(je);for(let W=0;W<je;W++)N[W]=W}n._data=t=D}if(de(!0),En("setData"),L==2&&(wt=!0),E!==!1){let D=P;D.auto(n,Ms)?Ao():Es(w,D.min,D.max),nt=nt||lt.left>=0,bt=!0,Un()}}n.setData=To;function Ao(){Ms=!0;let v,E;s==1&&(je>0?(nn=zi[0]=0,sn=zi[1]=je-1,v=t[0][nn],E=t[0][sn],L==2?(v=nn,E=sn):v==E&&(L==3?[v,E]=el(v,v,P.log,!1):L==4?[v,E]=su(v,v,P.log,!1):P.time?E=v+_n(86400/m):[v,E]=Ka(v,E,ru,!0))):(nn=zi[0]=v=null,sn=zi[1]=E=null)),Es(w,v,E)}let Mr,Ss,Sr,T,G,tt,Z,j,Ct,Nt;function Pt(v,E,D,N,W,Q){v??=Rf,D??=au,N??="butt",W??=Rf,Q??="round",v!=Mr&&(h.strokeStyle=Mr=v),W!=Ss&&(h.fillStyle=Ss=W),E!=Sr&&(h.lineWidth=Sr=E),Q!=G&&(h.lineJoin=G=Q),N!=tt&&(h.lineCap=tt=N),D!=T&&h.setLineDash(T=D)}function Ft(v,E,D,N){E!=Ss&&(h.fillStyle=Ss=E),v!=Z&&(h.font=Z=v),D!=j&&(h.textAlign=j=D),N!=Ct&&(h.textBaseline=Ct=N)}function Wt(v,E,D,N,W=0){if(N.length>0&&v.auto(n,Ms)&&(E==null||E.min==null)){let Q=we(nn,0),ht=we(sn,N.length-1),vt=D.min==null?M_(N,Q,ht,W,v.distr==3):[D.min,D.max];v.min=Ri(v.min,D.min=vt[0]),v.max=qn(v.max,D.max=vt[1])}}let ie={min:null,max:null};function me(){for(let N in b){let W=b[N];O[N]==null&&(W.min==null||O[w]!=null&&W.auto(n,Ms))&&(O[N]=ie)}for(let N in b){let W=b[N];O[N]==null&&W.from!=null&&O[W.from]!=null&&(O[N]=ie)}O[w]!=null&&de(!0);let v={};for(let N in O){let W=O[N];if(W!=null){let Q=v[N]=kr(b[N],I_);if(W.min!=null)dn(Q,W);else if(N!=w||s==2)if(je==0&&Q.from==null){let ht=Q.range(n,null,null,N);Q.min=ht[0],Q.max=ht[1]}else Q.min=Be,Q.max=-Be}}if(je>0){x.forEach((N,W)=>{if(s==1){let Q=N.scale,ht=O[Q];if(ht==null)return;let vt=v[Q];if(W==0){let Et=vt.range(n,vt.min,vt.max,Q);vt.min=Et[0],vt.max=Et[1],nn=Ai(vt.min,t[0]),sn=Ai(vt.max,t[0]),sn-nn>1&&(t[0][nn]<vt.min&&nn++,t[0][sn]>vt.max&&sn--),N.min=ni[nn],N.max=ni[sn]}else N.show&&N.auto&&Wt(vt,ht,N,t[W],N.sorted);N.idxs[0]=nn,N.idxs[1]=sn}else if(W>0&&N.show&&N.auto){let[Q,ht]=N.facets,vt=Q.scale,Et=ht.scale,[Bt,kt]=t[W],Vt=v[vt],ae=v[Et];Vt!=null&&Wt(Vt,O[vt],Q,Bt,Q.sorted),ae!=null&&Wt(ae,O[Et],ht,kt,ht.sorted),N.min=ht.min,N.max=ht.max}});for(let N in v){let W=v[N],Q=O[N];if(W.from==null&&(Q==null||Q.min==null)){let ht=W.range(n,W.min==Be?null:W.min,W.max==-Be?null:W.max,N);W.min=ht[0],W.max=ht[1]}}}for(let N in v){let W=v[N];if(W.from!=null){let Q=v[W.from];if(Q.min==null)W.min=W.max=null;else{let ht=W.range(n,Q.min,Q.max,N);W.min=ht[0],W.max=ht[1]}}}let E={},D=!1;for(let N in v){let W=v[N],Q=b[N];if(Q.min!=W.min||Q.max!=W.max){Q.min=W.min,Q.max=W.max;let ht=Q.distr;Q._min=ht==3?rs(Q.min):ht==4?Vh(Q.min,Q.asinh):ht==100?Q.fwd(Q.min):Q.min,Q._max=ht==3?rs(Q.max):ht==4?Vh(Q.max,Q.asinh):ht==100?Q.fwd(Q.max):Q.max,E[N]=D=!0}}if(D){x.forEach((N,W)=>{s==2?W>0&&E.y&&(N._paths=null):E[N.scale]&&(N._paths=null)});for(let N in E)wt=!0,En("setScale",N);dt&&lt.left>=0&&(nt=bt=!0)}for(let N in O)O[N]=null}function Ht(v){let E=Zh(nn-1,0,je-1),D=Zh(sn+1,0,je-1);for(;v[E]==null&&E>0;)E--;for(;v[D]==null&&D<je-1;)D++;return[E,D]}function ge(){if(je>0){let v=x.some(E=>E._focus)&&Nt!=Gt.alpha;v&&(h.globalAlpha=Nt=Gt.alpha),x.forEach((E,D)=>{if(D>0&&E.show&&(Ze(D,!1),Ze(D,!0),E._paths==null)){let N=Nt;Nt!=E.alpha&&(h.globalAlpha=Nt=E.alpha);let W=s==2?[0,t[D][0].length-1]:Ht(t[D]);E._paths=E.paths(n,D,W[0],W[1]),Nt!=N&&(h.globalAlpha=Nt=N)}}),x.forEach((E,D)=>{if(D>0&&E.show){let N=Nt;Nt!=E.alpha&&(h.globalAlpha=Nt=E.alpha),E._paths!=null&&Le(D,!1);{let W=E._paths!=null?E._paths.gaps:null,Q=E.points.show(n,D,nn,sn,W),ht=E.points.filter(n,D,Q,W);(Q||ht)&&(E.points._paths=E.points.paths(n,D,nn,sn,ht),Le(D,!0))}Nt!=N&&(h.globalAlpha=Nt=N),En("drawSeries",D)}}),v&&(h.globalAlpha=Nt=1)}}function Ze(v,E){let D=E?x[v].points:x[v];D._stroke=D.stroke(n,v),D._fill=D.fill(n,v)}function Le(v,E){let D=E?x[v].points:x[v],{stroke:N,fill:W,clip:Q,flags:ht,_stroke:vt=D._stroke,_fill:Et=D._fill,_width:Bt=D.width}=D._paths;Bt=ke(Bt*Te,3);let kt=null,Vt=Bt%2/2;E&&Et==null&&(Et=Bt>0?"#fff":vt);let ae=D.pxAlign==1&&Vt>0;if(ae&&h.translate(Vt,Vt),!E){let Ee=I-Bt/2,Se=S-Bt/2,xe=Y+Bt,Kt=mt+Bt;kt=new Path2D,kt.rect(Ee,Se,xe,Kt)}E?zt(vt,Bt,D.dash,D.cap,Et,N,W,ht,Q):De(v,vt,Bt,D.dash,D.cap,Et,N,W,ht,kt,Q),ae&&h.translate(-Vt,-Vt)}function De(v,E,D,N,W,Q,ht,vt,Et,Bt,kt){let Vt=!1;Et!=0&&R.forEach((ae,Ee)=>{if(ae.series[0]==v){let Se=x[ae.series[1]],xe=t[ae.series[1]],Kt=(Se._paths||zo).band;Ps(Kt)&&(Kt=ae.dir==1?Kt[0]:Kt[1]);let Yt,He=null;Se.show&&Kt&&w_(xe,nn,sn)?(He=ae.fill(n,Ee)||Q,Yt=Se._paths.clip):Kt=null,zt(E,D,N,W,He,ht,vt,Et,Bt,kt,Yt,Kt),Vt=!0}}),Vt||zt(E,D,N,W,Q,ht,vt,Et,Bt,kt)}let gn=zr|Kh;function zt(v,E,D,N,W,Q,ht,vt,Et,Bt,kt,Vt){Pt(v,E,D,N,W),(Et||Bt||Vt)&&(h.save(),Et&&h.clip(Et),Bt&&h.clip(Bt)),Vt?(vt&gn)==gn?(h.clip(Vt),kt&&h.clip(kt),ye(W,ht),ln(v,Q,E)):vt&Kh?(ye(W,ht),h.clip(Vt),ln(v,Q,E)):vt&zr&&(h.save(),h.clip(Vt),kt&&h.clip(kt),ye(W,ht),h.restore(),ln(v,Q,E)):(ye(W,ht),ln(v,Q,E)),(Et||Bt||Vt)&&h.restore()}function ln(v,E,D){D>0&&(E instanceof Map?E.forEach((N,W)=>{h.strokeStyle=Mr=W,h.stroke(N)}):E!=null&&v&&h.stroke(E))}function ye(v,E){E instanceof Map?E.forEach((D,N)=>{h.fillStyle=Ss=N,h.fill(D)}):E!=null&&v&&h.fill(E)}function es(v,E,D,N){let W=A[v],Q;if(N<=0)Q=[0,0];else{let ht=W._space=W.space(n,v,E,D,N),vt=W._incrs=W.incrs(n,v,E,D,N,ht);Q=Xx(E,D,vt,N,ht)}return W._found=Q}function cn(v,E,D,N,W,Q,ht,vt,Et,Bt){let kt=ht%2/2;_==1&&h.translate(kt,kt),Pt(vt,ht,Et,Bt,vt),h.beginPath();let Vt,ae,Ee,Se,xe=W+(N==0||N==3?-Q:Q);D==0?(ae=W,Se=xe):(Vt=W,Ee=xe);for(let Kt=0;Kt<v.length;Kt++)E[Kt]!=null&&(D==0?Vt=Ee=v[Kt]:ae=Se=v[Kt],h.moveTo(Vt,ae),h.lineTo(Ee,Se));h.stroke(),_==1&&h.translate(-kt,-kt)}function wr(v){let E=!0;return A.forEach((D,N)=>{if(!D.show)return;let W=b[D.scale];if(W.min==null){D._show&&(E=!1,D._show=!1,de(!1));return}else D._show||(E=!1,D._show=!0,de(!1));let Q=D.side,ht=Q%2,{min:vt,max:Et}=W,[Bt,kt]=es(N,vt,Et,ht==0?V:Dt);if(kt==0)return;let Vt=W.distr==2,ae=D._splits=D.splits(n,N,vt,Et,Bt,kt,Vt),Ee=W.distr==2?ae.map(Yt=>ni[Yt]):ae,Se=W.distr==2?ni[ae[1]]-ni[ae[0]]:Bt,xe=D._values=D.values(n,D.filter(n,Ee,N,kt,Se),N,kt,Se);D._rotate=Q==2?D.rotate(n,xe,N,kt):0;let Kt=D._size;D._size=yi(D.size(n,xe,N,v)),Kt!=null&&D._size!=Kt&&(E=!1)}),E}function Vi(v){let E=!0;return Eo.forEach((D,N)=>{let W=D(n,N,ki,v);W!=Mi[N]&&(E=!1),Mi[N]=W}),E}function ns(){for(let v=0;v<A.length;v++){let E=A[v];if(!E.show||!E._show)continue;let D=E.side,N=D%2,W,Q,ht=E.stroke(n,v),vt=D==0||D==3?-1:1,[Et,Bt]=E._found;if(E.label!=null){let Xn=E.labelGap*vt,ri=_n((E._lpos+Xn)*Te);Ft(E.labelFont[0],ht,"center",D==2?"top":Af),h.save(),N==1?(W=Q=0,h.translate(ri,_n(S+mt/2)),h.rotate((D==3?-Ja:Ja)/2)):(W=_n(I+Y/2),Q=ri);let Ks=gp(E.label)?E.label(n,v,Et,Bt):E.label;h.fillText(Ks,W,Q),h.restore()}if(Bt==0)continue;let kt=b[E.scale],Vt=N==0?Y:mt,ae=N==0?I:S,Ee=E._splits,Se=kt.distr==2?Ee.map(Xn=>ni[Xn]):Ee,xe=kt.distr==2?ni[Ee[1]]-ni[Ee[0]]:Et,Kt=E.ticks,Yt=E.border,He=Kt.show?Kt.size:0,Qe=_n(He*Te),Tn=_n((E.alignTo==2?E._size-He-E.gap:E.gap)*Te),Fe=E._rotate*-Ja/180,tn=p(E._pos*Te),ii=(Qe+Tn)*vt,Wn=tn+ii;Q=N==0?Wn:0,W=N==1?Wn:0;let mi=E.font[0],Si=E.align==1?Nr:E.align==2?Bh:Fe>0?Nr:Fe<0?Bh:N==0?"center":D==3?Bh:Nr,Wi=Fe||N==1?"middle":D==2?"top":Af;Ft(mi,ht,Si,Wi);let si=E.font[1]*E.lineGap,gi=Ee.map(Xn=>p(a(Xn,kt,Vt,ae))),wi=E._values;for(let Xn=0;Xn<wi.length;Xn++){let ri=wi[Xn];if(ri!=null){N==0?W=gi[Xn]:Q=gi[Xn],ri=""+ri;let Ks=ri.indexOf(`
`)==-1?[ri]:ri.split(/\n/gm);for(let $n=0;$n<Ks.length;$n++){let gf=Ks[$n];Fe?(h.save(),h.translate(W,Q+$n*si),h.rotate(Fe),h.fillText(gf,0,0),h.restore()):h.fillText(gf,W,Q+$n*si)}}}Kt.show&&cn(gi,Kt.filter(n,Se,v,Bt,xe),N,D,tn,Qe,ke(Kt.width*Te,3),Kt.stroke(n,v),Kt.dash,Kt.cap);let Xi=E.grid;Xi.show&&cn(gi,Xi.filter(n,Se,v,Bt,xe),N,N==0?2:1,N==0?S:I,N==0?mt:Y,ke(Xi.width*Te,3),Xi.stroke(n,v),Xi.dash,Xi.cap),Yt.show&&cn([tn],[1],N==0?1:0,N==0?1:2,N==1?S:I,N==1?mt:Y,ke(Yt.width*Te,3),Yt.stroke(n,v),Yt.dash,Yt.cap)}En("drawAxes")}function de(v){x.forEach((E,D)=>{D>0&&(E._paths=null,v&&(s==1?(E.min=null,E.max=null):E.facets.forEach(N=>{N.min=null,N.max=null})))})}let Ke=!1,Hn=!1,Ne=[];function hn(){Hn=!1;for(let v=0;v<Ne.length;v++)En(...Ne[v]);Ne.length=0}function Un(){Ke||(B_(jd),Ke=!0)}function ka(v,E=!1){Ke=!0,Hn=E,v(n),jd(),E&&Ne.length>0&&queueMicrotask(hn)}n.batch=ka;function jd(){if(ct&&(me(),ct=!1),wt&&(Rt(),wt=!1),St){if(We(f,Nr,jt),We(f,"top",ce),We(f,Fo,V),We(f,Oo,Dt),We(g,Nr,jt),We(g,"top",ce),We(g,Fo,V),We(g,Oo,Dt),We(d,Fo,Je),We(d,Oo,an),u.width=_n(Je*Te),u.height=_n(an*Te),A.forEach(({_el:v,_show:E,_size:D,_pos:N,side:W})=>{if(v!=null)if(E){let Q=W===3||W===0?D:0,ht=W%2==1;We(v,ht?"left":"top",N-Q),We(v,ht?"width":"height",D),We(v,ht?"top":"left",ht?ce:jt),We(v,ht?"height":"width",ht?Dt:V),qh(v,nr)}else oi(v,nr)}),Mr=Ss=Sr=G=tt=Z=j=Ct=T=null,Nt=1,Po(!0),jt!=At||ce!=Oe||V!=Xt||Dt!=Zt){de(!1);let v=V/Xt,E=Dt/Zt;if(dt&&!nt&&lt.left>=0){lt.left*=v,lt.top*=E,Er&&$i(Er,_n(lt.left),0,V,Dt),Tr&&$i(Tr,0,_n(lt.top),V,Dt);for(let D=0;D<ue.length;D++){let N=ue[D];N!=null&&(ze[D]*=v,Gn[D]*=E,$i(N,yi(ze[D]),yi(Gn[D]),V,Dt))}}if(Ge.show&&!ot&&Ge.left>=0&&Ge.width>0){Ge.left*=v,Ge.width*=v,Ge.top*=E,Ge.height*=E;for(let D in Lh)We(Cr,D,Ge[D])}At=jt,Oe=ce,Xt=V,Zt=Dt}En("setSize"),St=!1}Je>0&&an>0&&(h.clearRect(0,0,u.width,u.height),En("drawClear"),M.forEach(v=>v()),En("draw")),Ge.show&&ot&&(za(Ge),ot=!1),dt&&nt&&(js(null,!0,!1),nt=!1),ft.show&&ft.live&&bt&&(Ph(),bt=!1),l||(l=!0,n.status=1,En("ready")),Ms=!1,Ke=!1}n.redraw=(v,E)=>{wt=E||!1,v!==!1?Es(w,P.min,P.max):Un()};function Ah(v,E){let D=b[v];if(D.from==null){if(je==0){let N=D.range(n,E.min,E.max,v);E.min=N[0],E.max=N[1]}if(E.min>E.max){let N=E.min;E.min=E.max,E.max=N}if(je>1&&E.min!=null&&E.max!=null&&E.max-E.min<1e-16)return;v==w&&D.distr==2&&je>0&&(E.min=Ai(E.min,t[0]),E.max=Ai(E.max,t[0]),E.min==E.max&&E.max++),O[v]=E,ct=!0,Un()}}n.setScale=Ah;let Rh,Ch,Er,Tr,Kd,Qd,Ar,Rr,tf,ef,Ve,qe,ws=!1,In=lt.drag,Sn=In.x,wn=In.y;dt&&(lt.x&&(Rh=xi(l_,g)),lt.y&&(Ch=xi(c_,g)),P.ori==0?(Er=Rh,Tr=Ch):(Er=Ch,Tr=Rh),Ve=lt.left,qe=lt.top);let Ge=n.select=dn({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Cr=Ge.show?xi(a_,Ge.over?g:f):null;function za(v,E){if(Ge.show){for(let D in v)Ge[D]=v[D],D in Lh&&We(Cr,D,v[D]);E!==!1&&En("setSelect")}}n.setSelect=za;function N0(v){if(x[v].show)K&&qh(It[v],nr);else if(K&&oi(It[v],nr),dt){let D=Lt?ue[0]:ue[v];D!=null&&$i(D,-10,-10,V,Dt)}}function Es(v,E,D){Ah(v,{min:E,max:D})}function Gi(v,E,D,N){E.focus!=null&&k0(v),E.show!=null&&x.forEach((W,Q)=>{Q>0&&(v==Q||v==null)&&(W.show=E.show,N0(Q),s==2?(Es(W.facets[0].scale,null,null),Es(W.facets[1].scale,null,null)):Es(W.scale,null,null),Un())}),D!==!1&&En("setSeries",v,E),N&&Io("setSeries",n,v,E)}n.setSeries=Gi;function U0(v,E){dn(R[v],E)}function F0(v,E){v.fill=ve(v.fill||null),v.dir=we(v.dir,-1),E=E??R.length,R.splice(E,0,v)}function O0(v){v==null?R.length=0:R.splice(v,1)}n.addBand=F0,n.setBand=U0,n.delBand=O0;function B0(v,E){x[v].alpha=E,dt&&ue[v]!=null&&(ue[v].style.opacity=E),K&&It[v]&&(It[v].style.opacity=E)}let is,Ts,Js,Pr={focus:!0};function k0(v){if(v!=Js){let E=v==null,D=Gt.alpha!=1;x.forEach((N,W)=>{if(s==1||W>0){let Q=E||W==0||W==v;N._focus=E?null:Q,D&&B0(W,Q?1:Gt.alpha)}}),Js=v,D&&Un()}}K&&te&&Me(If,_t,v=>{lt._lock||(Qt(v),Js!=null&&Gi(null,Pr,!0,un.setSeries))});function Hi(v,E,D){let N=b[E];D&&(v=v/Te-(N.ori==1?ce:jt));let W=V;N.ori==1&&(W=Dt,v=W-v),N.dir==-1&&(v=W-v);let Q=N._min,ht=N._max,vt=v/W,Et=Q+(ht-Q)*vt,Bt=N.distr;return Bt==3?Or(10,Et):Bt==4?T_(Et,N.asinh):Bt==100?N.bwd(Et):Et}function z0(v,E){let D=Hi(v,w,E);return Ai(D,t[0],nn,sn)}n.valToIdx=v=>Ai(v,t[0]),n.posToIdx=z0,n.posToVal=Hi,n.valToPos=(v,E,D)=>b[E].ori==0?r(v,b[E],D?Y:V,D?I:0):o(v,b[E],D?mt:Dt,D?S:0),n.setCursor=(v,E,D)=>{Ve=v.left,qe=v.top,js(null,E,D)};function nf(v,E){We(Cr,Nr,Ge.left=v),We(Cr,Fo,Ge.width=E)}function sf(v,E){We(Cr,"top",Ge.top=v),We(Cr,Oo,Ge.height=E)}let Ro=P.ori==0?nf:sf,Co=P.ori==1?nf:sf;function V0(){if(K&&ft.live)for(let v=s==2?1:0;v<x.length;v++){if(v==0&&he)continue;let E=ft.values[v],D=0;for(let N in E)Ut[v][D++].firstChild.nodeValue=E[N]}}function Ph(v,E){if(v!=null&&(v.idxs?v.idxs.forEach((D,N)=>{et[N]=D}):P_(v.idx)||et.fill(v.idx),ft.idx=et[0]),K&&ft.live){for(let D=0;D<x.length;D++)(D>0||s==1&&!he)&&G0(D,et[D]);V0()}bt=!1,E!==!1&&En("setLegend")}n.setLegend=Ph;function G0(v,E){let D=x[v],N=v==0&&L==2?ni:t[v],W;he?W=D.values(n,v,E)??ne:(W=D.value(n,E==null?null:N[E],v,E),W=W==null?ne:{_:W}),ft.values[v]=W}function js(v,E,D){tf=Ve,ef=qe,[Ve,qe]=lt.move(n,Ve,qe),lt.left=Ve,lt.top=qe,dt&&(Er&&$i(Er,_n(Ve),0,V,Dt),Tr&&$i(Tr,0,_n(qe),V,Dt));let N,W=nn>sn;is=Be,Ts=null;let Q=P.ori==0?V:Dt,ht=P.ori==1?V:Dt;if(Ve<0||je==0||W){N=lt.idx=null;for(let vt=0;vt<x.length;vt++){let Et=ue[vt];Et!=null&&$i(Et,-10,-10,V,Dt)}te&&Gi(null,Pr,!0,v==null&&un.setSeries),ft.live&&(et.fill(N),bt=!0)}else{let vt,Et,Bt;s==1&&(vt=P.ori==0?Ve:qe,Et=Hi(vt,w),N=lt.idx=Ai(Et,t[0],nn,sn),Bt=U(t[0][N],P,Q,0));let kt=-10,Vt=-10,ae=0,Ee=0,Se=!0,xe="",Kt="";for(let Yt=s==2?1:0;Yt<x.length;Yt++){let He=x[Yt],Qe=et[Yt],Tn=Qe==null?null:s==1?t[Yt][Qe]:t[Yt][1][Qe],Fe=lt.dataIdx(n,Yt,N,Et),tn=Fe==null?null:s==1?t[Yt][Fe]:t[Yt][1][Fe];if(bt=bt||tn!=Tn||Fe!=Qe,et[Yt]=Fe,Yt>0&&He.show){let ii=Fe==null?-10:Fe==N?Bt:U(s==1?t[0][Fe]:t[Yt][0][Fe],P,Q,0),Wn=tn==null?-10:C(tn,s==1?b[He.scale]:b[He.facets[1].scale],ht,0);if(te&&tn!=null){let mi=P.ori==1?Ve:qe,Si=xn(Gt.dist(n,Yt,Fe,Wn,mi));if(Si<is){let Wi=Gt.bias;if(Wi!=0){let si=Hi(mi,He.scale),gi=tn>=0?1:-1,wi=si>=0?1:-1;wi==gi&&(wi==1?Wi==1?tn>=si:tn<=si:Wi==1?tn<=si:tn>=si)&&(is=Si,Ts=Yt)}else is=Si,Ts=Yt}}if(bt||Lt){let mi,Si;P.ori==0?(mi=ii,Si=Wn):(mi=Wn,Si=ii);let Wi,si,gi,wi,Xi,Xn,ri=!0,Ks=pt.bbox;if(Ks!=null){ri=!1;let $n=Ks(n,Yt);gi=$n.left,wi=$n.top,Wi=$n.width,si=$n.height}else gi=mi,wi=Si,Wi=si=pt.size(n,Yt);if(Xn=pt.fill(n,Yt),Xi=pt.stroke(n,Yt),Lt)Yt==Ts&&is<=Gt.prox&&(kt=gi,Vt=wi,ae=Wi,Ee=si,Se=ri,xe=Xn,Kt=Xi);else{let $n=ue[Yt];$n!=null&&(ze[Yt]=gi,Gn[Yt]=wi,Bf($n,Wi,si,ri),Ff($n,Xn,Xi),$i($n,yi(gi),yi(wi),V,Dt))}}}}if(Lt){let Yt=Gt.prox,He=Js==null?is<=Yt:is>Yt||Ts!=Js;if(bt||He){let Qe=ue[0];Qe!=null&&(ze[0]=kt,Gn[0]=Vt,Bf(Qe,ae,Ee,Se),Ff(Qe,xe,Kt),$i(Qe,yi(kt),yi(Vt),V,Dt))}}}if(Ge.show&&ws)if(v!=null){let[vt,Et]=un.scales,[Bt,kt]=un.match,[Vt,ae]=v.cursor.sync.scales,Ee=v.cursor.drag;if(Sn=Ee._x,wn=Ee._y,Sn||wn){let{left:Se,top:xe,width:Kt,height:Yt}=v.select,He=v.scales[Vt].ori,Qe=v.posToVal,Tn,Fe,tn,ii,Wn,mi=vt!=null&&Bt(vt,Vt),Si=Et!=null&&kt(Et,ae);mi&&Sn?(He==0?(Tn=Se,Fe=Kt):(Tn=xe,Fe=Yt),tn=b[vt],ii=U(Qe(Tn,Vt),tn,Q,0),Wn=U(Qe(Tn+Fe,Vt),tn,Q,0),Ro(Ri(ii,Wn),xn(Wn-ii))):Ro(0,Q),Si&&wn?(He==1?(Tn=Se,Fe=Kt):(Tn=xe,Fe=Yt),tn=b[Et],ii=C(Qe(Tn,ae),tn,ht,0),Wn=C(Qe(Tn+Fe,ae),tn,ht,0),Co(Ri(ii,Wn),xn(Wn-ii))):Co(0,ht)}else Dh()}else{let vt=xn(tf-Kd),Et=xn(ef-Qd);if(P.ori==1){let ae=vt;vt=Et,Et=ae}Sn=In.x&&vt>=In.dist,wn=In.y&&Et>=In.dist;let Bt=In.uni;Bt!=null?Sn&&wn&&(Sn=vt>=Bt,wn=Et>=Bt,!Sn&&!wn&&(Et>vt?wn=!0:Sn=!0)):In.x&&In.y&&(Sn||wn)&&(Sn=wn=!0);let kt,Vt;Sn&&(P.ori==0?(kt=Ar,Vt=Ve):(kt=Rr,Vt=qe),Ro(Ri(kt,Vt),xn(Vt-kt)),wn||Co(0,ht)),wn&&(P.ori==1?(kt=Ar,Vt=Ve):(kt=Rr,Vt=qe),Co(Ri(kt,Vt),xn(Vt-kt)),Sn||Ro(0,Q)),!Sn&&!wn&&(Ro(0,0),Co(0,0))}if(In._x=Sn,In._y=wn,v==null){if(D){if(mf!=null){let[vt,Et]=un.scales;un.values[0]=vt!=null?Hi(P.ori==0?Ve:qe,vt):null,un.values[1]=Et!=null?Hi(P.ori==1?Ve:qe,Et):null}Io(kh,n,Ve,qe,V,Dt,N)}if(te){let vt=D&&un.setSeries,Et=Gt.prox;Js==null?is<=Et&&Gi(Ts,Pr,!0,vt):is>Et?Gi(null,Pr,!0,vt):Ts!=Js&&Gi(Ts,Pr,!0,vt)}}bt&&(ft.idx=N,Ph()),E!==!1&&En("setCursor")}let As=null;Object.defineProperty(n,"rect",{get(){return As==null&&Po(!1),As}});function Po(v=!1){v?As=null:(As=g.getBoundingClientRect(),En("syncRect",As))}function rf(v,E,D,N,W,Q,ht){lt._lock||ws&&v!=null&&v.movementX==0&&v.movementY==0||(Ih(v,E,D,N,W,Q,ht,!1,v!=null),v!=null?js(null,!0,!0):js(E,!0,!1))}function Ih(v,E,D,N,W,Q,ht,vt,Et){if(As==null&&Po(!1),Qt(v),v!=null)D=v.clientX-As.left,N=v.clientY-As.top;else{if(D<0||N<0){Ve=-10,qe=-10;return}let[Bt,kt]=un.scales,Vt=E.cursor.sync,[ae,Ee]=Vt.values,[Se,xe]=Vt.scales,[Kt,Yt]=un.match,He=E.axes[0].side%2==1,Qe=P.ori==0?V:Dt,Tn=P.ori==1?V:Dt,Fe=He?Q:W,tn=He?W:Q,ii=He?N:D,Wn=He?D:N;if(Se!=null?D=Kt(Bt,Se)?a(ae,b[Bt],Qe,0):-10:D=Qe*(ii/Fe),xe!=null?N=Yt(kt,xe)?a(Ee,b[kt],Tn,0):-10:N=Tn*(Wn/tn),P.ori==1){let mi=D;D=N,N=mi}}Et&&(E==null||E.cursor.event.type==kh)&&((D<=1||D>=V-1)&&(D=tr(D,V)),(N<=1||N>=Dt-1)&&(N=tr(N,Dt))),vt?(Kd=D,Qd=N,[Ar,Rr]=lt.move(n,D,N)):(Ve=D,qe=N)}let Lh={width:0,height:0,left:0,top:0};function Dh(){za(Lh,!1)}let of,af,lf,cf;function hf(v,E,D,N,W,Q,ht){ws=!0,Sn=wn=In._x=In._y=!1,Ih(v,E,D,N,W,Q,ht,!0,!1),v!=null&&(Me(zh,Xh,uf,!1),Io(Cf,n,Ar,Rr,V,Dt,null));let{left:vt,top:Et,width:Bt,height:kt}=Ge;of=vt,af=Et,lf=Bt,cf=kt}function uf(v,E,D,N,W,Q,ht){ws=In._x=In._y=!1,Ih(v,E,D,N,W,Q,ht,!1,!0);let{left:vt,top:Et,width:Bt,height:kt}=Ge,Vt=Bt>0||kt>0,ae=of!=vt||af!=Et||lf!=Bt||cf!=kt;if(Vt&&ae&&za(Ge),In.setScale&&Vt&&ae){let Ee=vt,Se=Bt,xe=Et,Kt=kt;if(P.ori==1&&(Ee=Et,Se=kt,xe=vt,Kt=Bt),Sn&&Es(w,Hi(Ee,w),Hi(Ee+Se,w)),wn)for(let Yt in b){let He=b[Yt];Yt!=w&&He.from==null&&He.min!=Be&&Es(Yt,Hi(xe+Kt,Yt),Hi(xe,Yt))}Dh()}else lt.lock&&(lt._lock=!lt._lock,js(E,!0,v!=null));v!=null&&(mn(zh,Xh),Io(zh,n,Ve,qe,V,Dt,null))}function H0(v,E,D,N,W,Q,ht){if(lt._lock)return;Qt(v);let vt=ws;if(ws){let Et=!0,Bt=!0,kt=10,Vt,ae;P.ori==0?(Vt=Sn,ae=wn):(Vt=wn,ae=Sn),Vt&&ae&&(Et=Ve<=kt||Ve>=V-kt,Bt=qe<=kt||qe>=Dt-kt),Vt&&Et&&(Ve=Ve<Ar?0:V),ae&&Bt&&(qe=qe<Rr?0:Dt),js(null,!0,!0),ws=!1}Ve=-10,qe=-10,et.fill(null),js(null,!0,!0),vt&&(ws=vt)}function df(v,E,D,N,W,Q,ht){lt._lock||(Qt(v),Ao(),Dh(),v!=null&&Io(Lf,n,Ve,qe,V,Dt,null))}function ff(){A.forEach($x),k(n.width,n.height,!0)}ir(ja,Fr,ff);let Ir={};Ir.mousedown=hf,Ir.mousemove=rf,Ir.mouseup=uf,Ir.dblclick=df,Ir.setSeries=(v,E,D,N)=>{let W=un.match[2];D=W(n,E,D),D!=-1&&Gi(D,N,!0,!1)},dt&&(Me(Cf,g,hf),Me(kh,g,rf),Me(Pf,g,v=>{Qt(v),Po(!1)}),Me(If,g,H0),Me(Lf,g,df),Qh.add(n),n.syncRect=Po);let Va=n.hooks=i.hooks||{};function En(v,E,D){Hn?Ne.push([v,E,D]):v in Va&&Va[v].forEach(N=>{N.call(null,n,E,D)})}(i.plugins||[]).forEach(v=>{for(let E in v.hooks)Va[E]=(Va[E]||[]).concat(v.hooks[E])});let pf=(v,E,D)=>D,un=dn({key:null,setSeries:!1,filters:{pub:Hf,sub:Hf},scales:[w,x[1]?x[1].scale:null],match:[Wf,Wf,pf],values:[null,null]},lt.sync);un.match.length==2&&un.match.push(pf),lt.sync=un;let mf=un.key,Nh=zp(mf);function Io(v,E,D,N,W,Q,ht){un.filters.pub(v,E,D,N,W,Q,ht)&&Nh.pub(v,E,D,N,W,Q,ht)}Nh.sub(n);function W0(v,E,D,N,W,Q,ht){un.filters.sub(v,E,D,N,W,Q,ht)&&Ir[v](null,E,D,N,W,Q,ht)}n.pub=W0;function X0(){Nh.unsub(n),Qh.delete(n),Mn.clear(),Yh(ja,Fr,ff),c.remove(),_t?.remove(),En("destroy")}n.destroy=X0;function Uh(){En("init",i,t),To(t||i.data,!1),O[w]?Ah(w,O[w]):Ao(),ot=Ge.show&&(Ge.width>0||Ge.height>0),nt=bt=!0,k(i.width,i.height)}return x.forEach(br),A.forEach(Qi),e?e instanceof HTMLElement?(e.appendChild(c),Uh()):e(n,Uh):Uh(),n}An.assign=dn;An.fmtNum=ou;An.rangeNum=Ka;An.rangeLog=el;An.rangeAsinh=su;An.orient=rr;An.pxRatio=Te;An.join=O_;An.fmtDate=lu,An.tzDate=Y_;An.sync=zp;{An.addGap=Px,An.clipGaps=sl;let i=An.paths={points:$p};i.linear=Yp,i.stepped=Dx,i.bars=Nx,i.spline=Fx}var ll=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let l of this.listeners)l(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,l)=>a+l.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,l)=>{let c={contour:l,start:r,length:a.length_mm};return r+=a.length_mm+s,c}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:mu(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding",n=as(t)[0]){if(!n)return;let s=this.payload.joints.findIndex(o=>o.id===t.joint),r=this.payload.joints[s].contours.findIndex(o=>o.id===n.contour);this.go({joint:s,contour:r,station:n.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).flatMap(a=>as(a).map(l=>{let c=this.joint.contours.findIndex(u=>u.id===l.contour);return{finding:a,spot:l,at:e[c].start+this.joint.contours[c].stations.s[l.station]}})).sort((a,l)=>a.at-l.at||a.finding.n-l.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return t>0?r[0]??s[0]:r.at(-1)??s.at(-1)}findingsHere(t=this.place){let e=this.payload.joints[t.joint];return Wr(this.payload.findings,e,e.contours[t.contour],t.station)}},qx=1;function Wr(i,t,e,n){let s=e.stations.s;return i.filter(r=>r.joint!==t.id||r.station===null?!1:r.places.some(o=>o.contour===e.id&&(Go(o,s[n])||o.station===n))?!0:r.contour!==e.id?!1:r.from_s!==null&&r.to_s!==null?Go(r,s[n]):r.everywhere||n===r.station||Math.abs(s[n]-s[r.station])<=qx)}var cl=i=>i.severity==="note"&&(i.from_s!==null||i.everywhere),as=i=>i.contour===null||i.station===null?[]:[{contour:i.contour,station:i.station,from_s:i.from_s,to_s:i.to_s},...i.places];function Go(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function mu(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}var Ls=132,hl=24,ul=class{constructor(t,e,n,s,r){this.judged=t;this.within=e;this.further=n;this.atlas=s;this.walk=r}judged;within;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let a of this.charts)a.remove();en(this.judged),en(this.within),en(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(a=>a.columns))].filter(a=>this.isThere(a)),e=new Set(this.atlas.payload.findings.filter(a=>a.joint===this.walk.joint.id).map(a=>a.rule)),n=t.filter(a=>this.walk.facts.bands.some(l=>e.has(l.rule)&&l.columns.includes(a))),s=Object.keys(this.atlas.payload.quantities).filter(a=>!t.includes(a)&&this.isThere(a)),r=this.ranges([...t,...s]);this.judged.classList.toggle("small-multiples",n.length>2);for(let[a,l]of[[this.judged,n],[this.within,t.filter(c=>!n.includes(c))],[this.further,s]])for(let c of l){let u=new gu(c,this.atlas,this.walk,r.get(this.scale(c)));this.charts.push(u),a.append(u.root),u.later()}let o=this.within.closest("details");o&&(o.hidden=n.length===t.length),t.length&&!n.length&&this.judged.append(qt("p",null,e.size?yt("What was found has no chart: it is not a value along the seam. Every value along the seam is within its limits."):yt("Every judged quantity is within its limits everywhere."))),t.length||this.judged.append(qt("p",null,yt("No judged quantity was measured along this seam.")))}scale(t){return this.atlas.payload.quantities[t]?.scale??t}ranges(t){let e=new Map;for(let n of t){let s=Yx(n,this.walk),r=this.scale(n),o=e.get(r)??s;e.set(r,[Math.min(s[0],o[0]),Math.max(s[1],o[1])])}return e}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.further.contains(e.root)||e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},gu=class{constructor(t,e,n,s){this.column=t;this.atlas=e;this.walk=n;this.range=s;let r=n.facts.bands.filter(d=>d.columns.includes(t));this.edges=em(t,n);let o=new Set(r.map(d=>d.rule));this.findings=e.payload.findings.filter(d=>d.joint===n.joint.id&&(d.quantity===t||o.has(d.rule)&&!r.some(f=>f.columns.length>1)));let a=e.words,l=a.title(t),c=n.facts.tolerances[t],u=r.filter(d=>d.words).map(d=>`${d.title.toLowerCase()}: ${d.words}`),h=a.unit(t);this.root=qt("figure",{class:"chart","data-column":t},qt("figcaption",null,qt("span",{class:"chart-title"},l,h?` / ${h}`:""),this.here,qt("span",{class:"chart-limits"},[...u,...c?[yt("tolerance ±{value}",{value:a.value(c,t)})]:[]].join(" · "))),qt("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;range;root;plotHost=qt("div",{class:"chart-plot"});spread=qt("div",{class:"chart-spread"});here=qt("b",{class:"chart-here"});cursor=qt("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(n=>{let s=n.summary[this.column],r=this.atlas.words,o=this.walk.joint.contours.length>1?`${n.id}: `:"";if(!s)return`${o}${yt("not measured")}`;let a=(l,c)=>c==null?"":`, ${l} ${r.value(c,this.column)}`;return`${o}${yt("least")} ${r.value(s.min,this.column)}${a("p05",s.p05)}, ${yt("median")} ${r.value(s.median,this.column)}${a("p95",s.p95)}, ${yt("most")} ${r.value(s.max,this.column)}`}),e=this.walk.joint.summary[this.column]?.outside;return e!==void 0&&t.push(yt("outside a limit: {share} % of the length",{share:_i(100*e,e>0&&e<.1?1:0)})),qt("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=Do(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((l,c)=>{t.push(r+l),e.push(a?.[c]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:l}of o){let c=this.walk.joint.contours[a];e[c.id]?.forEach((u,h)=>{u!==null&&r.push([t.valToPos(l+c.stations.s[h],"x",!0),t.valToPos(u,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range,s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o=this.atlas.payload.quantities[this.column]?.unit??"",a={width:s,height:Ls,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(l,c,u)=>[c,u]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>rn("soft"),grid:{show:!1},ticks:{stroke:()=>rn("line"),size:4},size:22,font:tm,gap:3,values:(l,c)=>Kp(c.map(u=>u/Ei()),2)},{stroke:()=>rn("soft"),grid:{stroke:()=>rn("line"),width:1},ticks:{show:!1},size:52,font:tm,space:26,values:(l,c)=>Kp(c.map(u=>ss(u,o,0)[0]),ss(0,o,r)[2])}],series:[{},{stroke:()=>rn("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[l=>{this.drawBands(l),this.drawTolerance(l,t)}],draw:[l=>{this.drawFindings(l),this.show()}],ready:[l=>this.listen(l)]}};this.plot=new An(a,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let l=this.plotHost.getBoundingClientRect().width;this.plot&&l>50&&Math.abs(l-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:l,height:Ls})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[l,c]of[[a.low,!0],[a.high,!1]]){let u=this.line(t,l);if(u.length<2)continue;let h=c?s+o:s;e.save(),e.beginPath(),u.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(u[u.length-1][0],h),e.lineTo(u[0][0],h),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=rn("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=rn("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=rn("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),u.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=rn("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let l=a;for(;l+1<e.length&&n[l+1]!==null;)l++;o.beginPath();for(let c=a;c<=l;c++)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]+r,"y",!0));for(let c=l;c>=a;c--)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]-r,"y",!0));o.closePath(),o.fill(),a=l}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${im}`;let a=[];for(let l of this.findings)if(l.severity!=="note")for(let[c,u]of as(l).flatMap(h=>this.unrolled(h,r))){let h=t.valToPos(c,"x",!0),d=Math.max(t.valToPos(u,"x",!0),h+3*o);if(d<t.bbox.left||h>t.bbox.left+t.bbox.width)continue;e.fillStyle=rn(l.waived?"waived":l.severity==="must-fix"?"broken":"near"),e.fillRect(h,n+s-4*o,d-h,4*o);let f=(h+d)/2,g=a.find(_=>Math.abs(_.x-f)<14*o);g?g.findings.push(l):a.push({x:f,findings:[l],colour:String(e.fillStyle)})}e.textAlign="center";for(let{x:l,findings:c,colour:u}of a)e.fillStyle=u,e.fillText(Cs(c),l,n+11*o);e.restore()}unrolled({contour:t,from_s:e,to_s:n},s){let r=this.walk.joint.contours.findIndex(l=>l.id===t);if(r<0)return[];let{start:o,length:a}=s[r];return e===null||n===null?[]:e<=n?[[o+e,o+n]]:[[o+e,o+a],[o,o+n]]}drawSpread(t,e,n){en(this.spread);let s=new Array(hl).fill(0);for(let c of t)c!==null&&s[Math.min(hl-1,Math.max(0,Math.floor((c-e)/(n-e)*hl)))]++;let r=Math.max(1,...s),o=Ls-30,a=o/hl,l=ut("svg",{viewBox:`0 0 74 ${Ls}`,width:74,height:Ls,role:"img","aria-label":yt("Distribution of the values")});s.forEach((c,u)=>{c&&l.append(ut("rect",{class:"bin",x:4,y:q(8+o-(u+1)*a),width:q(Math.max(2,60*Math.sqrt(c/r))),height:q(a-.7)}))});for(let c of this.edges)for(let u of[c.low,c.high]){if(typeof u!="number"||u<e||u>n)continue;let h=8+o*(1-(u-e)/(n-e));l.append(ut("line",{class:"bin-limit",x1:0,x2:74,y1:q(h),y2:q(h)}))}l.append(ut("text",{class:"side",x:4,y:Ls-8},yt("spread √n"))),this.spread.append(l)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/An.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${q(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:Ls})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:Ls}))}remove(){this.plot?.destroy()}},em=(i,t)=>t.facts.bands.filter(e=>e.columns.includes(i)).flatMap(e=>e.edges).filter(e=>e.judged===i);function Yx(i,t){let e=em(i,t),n=1/0,s=-1/0;for(let l of t.joint.contours)for(let c of l.stations[i]??[])c!==null&&(n=Math.min(n,c),s=Math.max(s,c));for(let l of e){let c=Jx(l.low),u=Qp(l.high);c!==null&&(n=Math.min(n,c),s=Math.max(s,c)),u!==null&&u-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,u),n=Math.min(n,u))}let r=e.map(l=>Qp(l.low)).filter(l=>l!==null&&l>0);r.length&&e.every(l=>l.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let o=t.facts.tolerances[i]??0;n-=o,s+=o;let a=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-a,s+a]}function Kp(i,t){let e=Zx(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":_i(Number(s),e))}function Zx(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var nm=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),Jx=i=>nm(i).reduce((t,e)=>t===null||e<t?e:t,null),Qp=i=>nm(i).reduce((t,e)=>t===null||e>t?e:t,null),im='"Barlow Semi Condensed", "Arial Narrow", sans-serif',tm=`500 12px ${im}`;var dl=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],jx=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],sm=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function or(i){let t=sm([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(dl(o,t))<.8)??e[1],s=dl(n,t),r=sm([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:jx(t,r),toward:t}}var Xr=(i,t)=>[dl(i.right,t),dl(i.up,t)];function rm(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),l=new Int32Array(e*n).fill(-1),c=new Float32Array(e*n*3),{right:u,up:h,toward:d}=t,f=0;for(let g of i){let{positions:_,triangles:p}=g,m=_.length/3,x=new Float32Array(m),A=new Float32Array(m),b=new Float32Array(m);for(let R=0;R<m;R++){let[w,y,M]=[_[3*R],_[3*R+1],_[3*R+2]];x[R]=(u[0]*w+u[1]*y+u[2]*M-r)*s,A[R]=(o-(h[0]*w+h[1]*y+h[2]*M))*s,b[R]=d[0]*w+d[1]*y+d[2]*M}for(let R=0;R<p.length;R+=3){let[w,y,M]=[p[R],p[R+1],p[R+2]],z=(x[y]-x[w])*(A[M]-A[w])-(A[y]-A[w])*(x[M]-x[w]);if(Math.abs(z)<1e-9)continue;let F=-((b[y]-b[w])*(A[M]-A[w])-(b[M]-b[w])*(A[y]-A[w]))/z,P=-((b[M]-b[w])*(x[y]-x[w])-(b[y]-b[w])*(x[M]-x[w]))/z,L=Math.max(0,Math.ceil(Math.min(x[w],x[y],x[M])-.5)),U=Math.min(e-1,Math.floor(Math.max(x[w],x[y],x[M])-.5)),C=Math.max(0,Math.ceil(Math.min(A[w],A[y],A[M])-.5)),O=Math.min(n-1,Math.floor(Math.max(A[w],A[y],A[M])-.5)),H=Math.hypot(F/s,P/s,1/s/s)||1,B=[F*s,-P*s,1],st=Math.hypot(B[0],B[1],B[2])||H,X=f+(g.face.length?g.face[R/3]:0);for(let J=C;J<=O;J++)for(let et=L;et<=U;et++){let ft=((et+.5-x[w])*(A[M]-A[w])-(J+.5-A[w])*(x[M]-x[w]))/z,lt=((J+.5-A[w])*(x[y]-x[w])-(et+.5-x[w])*(A[y]-A[w]))/z;if(ft<-1e-6||lt<-1e-6||ft+lt>1+1e-6)continue;let K=b[w]+ft*(b[y]-b[w])+lt*(b[M]-b[w]),dt=J*e+et;K<=a[dt]||(a[dt]=K,l[dt]=X,c[3*dt]=B[0]/st,c[3*dt+1]=B[1]/st,c[3*dt+2]=B[2]/st)}}f+=1e6}return{width:e,height:n,depth:a,face:l,normal:c}}function om(i,t,e,n,s,r){let{width:o,height:a,depth:l,face:c,normal:u}=t,h=i.data,d=(p,m,x)=>{for(let A=0;A<3;A++)h[4*p+A]+=(m[A]-h[4*p+A])*x},[f,g]=[1/0,-1/0];for(let p of l)p>-1/0&&(p<f&&(f=p),p>g&&(g=p));let _=Math.max(1e-6,g-f);for(let p=0;p<o*a;p++){if(c[p]<0)continue;let m=-.5*u[3*p]+.5*u[3*p+1],x=.12*(1-(l[p]-f)/_)+Math.max(0,-m)*.3+(1-u[3*p+2])*.1;d(p,e,s),d(p,n,Math.min(.5,x)*s)}for(let p=0;p<a-1;p++)for(let m=0;m<o-1;m++){let x=p*o+m,A=0;for(let b of[x+1,x+o]){if(c[x]===c[b])continue;if(c[x]<0||c[b]<0){A=1;continue}u[3*x]*u[3*b]+u[3*x+1]*u[3*b+1]+u[3*x+2]*u[3*b+2]<.97&&(A=Math.max(A,.6)),Math.abs(l[x]-l[b])>.15&&(A=Math.max(A,.85))}A&&d(x,n,A*r)}}var Ho=["unknown","within","near","broken","waived","look","noted"];var pl=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;en(t),t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=qt("canvas",{"aria-hidden":!0});overlay=ut("svg",{role:"group"});cursor=ut("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=or(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],l=(g,_)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,_),a=Math.max(a,_)};for(let g of this.walk.joint.contours)Kn(g).forEach(_=>l(...Xr(n,_)));let c=new Set([...this.walk.joint.cover,...this.walk.joint.base]),u=this.atlas.meshes.filter(g=>c.has(g.part));for(let g of u)for(let _=0;_<g.positions.length;_+=3)l(...Xr(n,[g.positions[_],g.positions[_+1],g.positions[_+2]]));let h=t?34:40,d=Math.min((e.width-2*h)/Math.max(1e-6,r-s),(e.height-2*h)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(u,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=h=>Kx(rn(h)),l=o.createImageData(s,r),c=a("sheet");for(let h=0;h<s*r;h++)l.data.set([...c,255],4*h);let u=new Set(this.walk.joint.cover);for(let h of[!1,!0]){let d=t.filter(g=>u.has(g.part)===h);if(!d.length)continue;let f=rm(d,e.plane,s,r,e.scale*n,e.x,e.y);om(l,f,a(h?"cover-fill":"base-fill"),a("ink"),h?.6:.9,h?.55:.25)}o.putImageData(l,0,0)}at(t){let[e,n]=Xr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){en(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${q(t.width)} ${q(t.height)}`),this.overlay.setAttribute("aria-label",yt("The seam seen along the beam, with the findings as numbered section marks"));let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=Kn(n).map(r=>this.at(r));this.overlay.append(ut("path",{class:"seam casing",d:Wo(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let l=o+1<s.length?o+1:o,c=s.slice(r,l+1);n.closed&&o===s.length-1&&c.push(s[0]),this.overlay.append(ut("path",{class:`seam ${Ho[a]}`,d:Wo(c,!1)})),a===3&&this.overlay.append(ut("path",{class:"seam broken-core",d:Wo(c,!1)}))}}this.drawStarts(),this.drawPlaces(),this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawStarts(){for(let t of this.walk.joint.contours){let e=Kn(t).map(p=>this.at(p));if(e.length<3)continue;let[n,s]=e[0],[r,o]=this.normal(t,0),a=e.find(([p,m])=>Math.hypot(p-n,m-s)>6)??e[1],l=Math.hypot(a[0]-n,a[1]-s)||1,[c,u]=[(a[0]-n)/l,(a[1]-s)/l],[h,d]=[n-r*13,s-o*13],[f,g]=[h+c*20,d+u*20],_=this.walk.joint.contours.length>1?`${t.id}: s = 0`:"s = 0";this.overlay.append(ut("g",{class:"start-mark","data-start":t.id},ut("path",{d:`M${q(n+r*7)} ${q(s+o*7)}L${q(n-r*13)} ${q(s-o*13)}L${q(f)} ${q(g)}`}),ut("path",{class:"cut-arrow",d:lm(f,g,c,u)}),ut("text",{x:q(n-r*24),y:q(s-o*24),"text-anchor":Math.abs(r)<.5?"middle":r>0?"end":"start","dominant-baseline":"central"},_)))}}drawMarks(){let t=[];for(let s of this.atlas.payload.findings)if(!(s.joint!==this.walk.joint.id||s.station===null||cl(s)))for(let r of as(s)){let o=this.walk.joint.contours.find(d=>d.id===r.contour);if(!o)continue;let[a,l]=this.at(Kn(o)[r.station]),[c,u]=this.normal(o,r.station),h=t.find(d=>Math.hypot(d.x-a,d.y-l)<18);h?h.findings.includes(s)||h.findings.push(s):t.push({x:a,y:l,nx:c,ny:u,findings:[s],spot:r})}let e=t.length>8?Xa:Cs,n=s=>e(s.findings).length*4+2;for(let s=0;s<t.length;s++)for(let r=s+1;r<t.length;r++){let[o,a]=[t[s],t[r]],[l,c]=[Math.abs(o.x+o.nx*31-a.x-a.nx*31),Math.abs(o.y+o.ny*31-a.y-a.ny*31)];l>n(o)+n(a)||c>17||(o.findings=[...new Set([...o.findings,...a.findings])].sort((u,h)=>u.n-h.n),t.splice(r,1),r=s)}for(let{x:s,y:r,nx:o,ny:a,findings:l,spot:c}of t){let u=l[0],h=u.waived?"waived":u.severity,d=ut("g",{class:`section-mark ${h}`,tabindex:0,role:"button","data-finding":u.n,"aria-label":`${yt("Finding")} ${l.map(p=>p.n).join(", ")}: ${u.title}`});for(let p of[1,-1]){let[m,x]=[s+p*o*8,r+p*a*8],[A,b]=[s+p*o*19,r+p*a*19];d.append(ut("path",{class:"cut",d:`M${q(m)} ${q(x)}L${q(A)} ${q(b)}`}),ut("path",{class:"cut-arrow",d:lm(A,b,-a,o)}))}let[f,g]=[s+o*31,r+a*31];d.append(ut("circle",{class:"target",cx:q(s),cy:q(r),r:13}),ut("text",{x:q(f),y:q(g),"text-anchor":"middle","dominant-baseline":"central"},e(l)));let _=p=>{p.stopPropagation(),this.walk.showFinding(u,"finding",c)};d.addEventListener("click",_),d.addEventListener("pointerdown",p=>p.stopPropagation()),d.addEventListener("keydown",p=>{(p.key==="Enter"||p.key===" ")&&(p.preventDefault(),_(p))}),this.overlay.append(d)}}drawPlaces(){for(let t of this.atlas.payload.findings){let e=this.walk.joint.contours.find(l=>l.id===t.contour);if(t.joint!==this.walk.joint.id||!t.at||!e||t.station===null||t.from_s!==null&&!t.met)continue;let[n,s]=this.at(t.at),[r,o]=this.at(Kn(e)[t.station]),a=ut("g",{class:`place-mark ${t.waived?"waived":t.severity}`,"data-place-of":t.n},ut("title",null,`${yt("Finding")} ${t.n}: ${t.title}${t.value==="–"?"":`, ${t.value}`}`),ut("path",{d:`M${q(n-5)} ${q(s-5)}L${q(n+5)} ${q(s+5)}M${q(n-5)} ${q(s+5)}L${q(n+5)} ${q(s-5)}`}));Math.hypot(n-r,s-o)>4&&a.append(ut("path",{class:"reach",d:`M${q(r)} ${q(o)}L${q(n)} ${q(s)}`})),this.overlay.append(a)}}normal(t,e){let[n,s]=Xr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=ut("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,l]=Xr(t.plane,o);if(Math.hypot(a,l)<.3)return;let c=[e[0]+a*20,e[1]-l*20];n.append(ut("path",{d:`M${q(e[0])} ${q(e[1])}L${q(c[0])} ${q(c[1])}`}),ut("text",{x:q(c[0]+a*7),y:q(c[1]-l*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(Kn(e)[t.station]),[r,o]=this.normal(e,t.station);en(this.cursor),this.cursor.append(...[1,-1].flatMap(a=>["casing",""].map(l=>ut("path",{class:l,d:`M${q(n+a*r*6)} ${q(s+a*o*6)}L${q(n+a*r*17)} ${q(s+a*o*17)}`})))),this.lens(t),this.cursor.setAttribute("data-x",q(n)),this.cursor.setAttribute("data-y",q(s))}lens(t){let e=this.view,{joint:n,contour:s,facts:r}=this.walk,o=this.walk.findingsHere().find(P=>P.from_s!==null&&P.severity!=="note");if(!o)return;let{s:a}=s.stations,l=Kn(s).map(P=>this.at(P)),c=as(o).find(P=>P.contour===s.id&&Go(P,a[t.station]))??o,u=a.flatMap((P,L)=>Go(c,P)?[L]:[]),h=u.map(P=>l[P]),d=Math.max(...h.map(P=>Math.hypot(P[0]-h[0][0],P[1]-h[0][1])));if(!u.length||d>26)return;let f=Math.max(30,Math.min(58,Math.min(e.width,e.height)*.15)),[g,_]=l[t.station],p=n.contours.flatMap(P=>Kn(P).map(L=>this.at(L))),m=(P,L)=>Math.min(...p.map(U=>Math.hypot(U[0]-P,U[1]-L)),P,L,e.width-P,e.height-L)-f,x=[];for(let P=1;P<8;P++)for(let L=1;L<8;L++)x.push([e.width*P/8,e.height*L/8]);let A=x.filter(([P,L])=>m(P,L)>4);if(!A.length)return;let[b,R]=A.reduce((P,L)=>Math.hypot(P[0]-g,P[1]-_)<=Math.hypot(L[0]-g,L[1]-_)?P:L),w=Math.max(2,Math.min(8,f*.9/Math.max(d,4))),y=P=>[b+(P[0]-g)*w,R+(P[1]-_)*w],M=Math.hypot(b-g,R-_),z=ut("g",{class:"plan-lens","data-finding":o.n},ut("path",{class:"tie",d:`M${q(g)} ${q(_)}L${q(b-(b-g)/M*f)} ${q(R-(R-_)/M*f)}`}),ut("circle",{class:"rim",cx:q(b),cy:q(R),r:q(f)})),F=ut("g",{"clip-path":"url(#plan-lens-rim)"});z.append(ut("clipPath",{id:"plan-lens-rim"},ut("circle",{cx:q(b),cy:q(R),r:q(f-1)})),F);for(let[P,L,U]of r.worst[s.id]??[]){let C=l.slice(P,(L+1<l.length?L+1:L)+1);s.closed&&L===l.length-1&&C.push(l[0]),F.append(ut("path",{class:`seam ${Ho[U]}`,d:Wo(C.map(y),!1)})),U===3&&F.append(ut("path",{class:"seam broken-core",d:Wo(C.map(y),!1)}))}z.append(ut("text",{x:q(b),y:q(_>R?R-f-6:R+f+13),"text-anchor":"middle"},yt("{count} times larger",{count:Math.round(w)}))),this.cursor.append(z)}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>Kn(r).forEach((a,l)=>{let[c,u]=this.at(a),h=Math.hypot(c-t,u-e);h<s&&(s=h,n={contour:o,station:l})})),this.walk.go(n,"plan")}},am=new WeakMap;function Kn(i){let t=am.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),am.set(i,t)}return t}function Wo(i,t){return"M"+i.map(([e,n])=>`${q(e)} ${q(n)}`).join("L")+(t?"Z":"")}function lm(i,t,e,n){return`M${q(i+e*9)} ${q(t+n*9)}L${q(i-n*3.4)} ${q(t+e*3.4)}L${q(i+n*3.4)} ${q(t-e*3.4)}Z`}function Kx(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var xu=class{isDrawn=!1;packed;sections=new Map;bare=new Map;constructor(t){this.packed=t.as_drawn?.sections??[]}shown(t,e){if(!this.isDrawn)return e;let n=`${t}/${e.contour.id}`;if(!this.sections.has(n)){let s=this.packed.find(r=>r.joint===t&&r.contour===e.contour.id);this.sections.set(n,s?new Lr(s):null)}return this.bare.has(e.contour)||this.bare.set(e.contour,Qx(e.contour)),{facts:{...e.facts,drop:null},contour:this.bare.get(e.contour),sections:this.sections.get(n),findings:[]}}wire(t){let e=fe("proposed-switch");if(!e||!this.packed.length)return;e.hidden=!1;let n=[[yt("as proposed"),!1],[yt("as drawn"),!0]],s=n.map(([r,o])=>{let a=qt("button",{type:"button","aria-pressed":String(!o)},r);return a.addEventListener("click",()=>{this.isDrawn=o,s.forEach((l,c)=>l.setAttribute("aria-pressed",String(n[c][1]===o))),t()}),a});e.append(...s)}};function Qx(i){let{s:t,x:e,y:n,z:s,u:r}=i.stations,o=t.map(()=>null),a=Object.keys(i.stations).filter(c=>!["s","x","y","z","u"].includes(c)),l={s:t,x:e,y:n,z:s,u:r};for(let c of a)l[c]=o;return{...i,stations:l}}var ml=i=>(_u.has(i)||_u.set(i,new xu(i.payload)),_u.get(i)),_u=new WeakMap;var Xs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},$s={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Om=0,qu=1,Bm=2;var Ma=1,km=2,_o=3,Ni=0,Nn=1,jn=2,pr=0,xo=1,Yu=2,Zu=3,Ju=4,zm=5;var mr=100,Vm=101,Gm=102,Hm=103,Wm=104,Xm=200,$m=201,qm=202,Ym=203,ju=204,Ku=205,Zm=206,Jm=207,jm=208,Km=209,Qm=210,tg=211,eg=212,ng=213,ig=214,zl=0,Vl=1,Gl=2,oo=3,Hl=4,Wl=5,Xl=6,$l=7,xc=0,sg=1,rg=2,Ji=0,Qu=1,td=2,ed=3,nd=4,id=5,sd=6,rd=7;var od=300,gr=301,yo=302,yc=303,vc=304,ql=1e3,Yi=1001,Yl=1002,Cn=1003,og=1004;var Sa=1005;var Jn=1006,bc=1007;var ys=1008;var ti=1009,ad=1010,ld=1011,vo=1012,Mc=1013,Ui=1014,Fi=1015,Oi=1016,Sc=1017,wc=1018,_r=1020,cd=35902,hd=35899,ud=1021,dd=1022,Bi=1023,ps=1026,vs=1027,fd=1028,Ec=1029,qs=1030,Tc=1031;var Ac=1033,wa=33776,Ea=33777,Ta=33778,Aa=33779,Rc=35840,Cc=35841,Pc=35842,Ic=35843,Lc=36196,Dc=37492,Nc=37496,Uc=37488,Fc=37489,Ra=37490,Oc=37491,Bc=37808,kc=37809,zc=37810,Vc=37811,Gc=37812,Hc=37813,Wc=37814,Xc=37815,$c=37816,qc=37817,Yc=37818,Zc=37819,Jc=37820,jc=37821,Kc=36492,Qc=36494,th=36495,eh=36283,nh=36284,Ca=36285,ih=36286;var Qo=2300,Zl=2301,Bl=2302,zu=2303,Vu=2400,Gu=2401,Hu=2402;var ag=3200;var sh=0,lg=1,bs="",ui="srgb",ta="srgb-linear",ea="linear",Ie="srgb";var kl=7680;var cg=519,hg=512,ug=513,dg=514,pd=515,fg=516,pg=517,md=518,gd=519,mg=35044;var _d="300 es",bi=2e3,ao=2001;function ty(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function ey(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function na(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function gg(){let i=na("canvas");return i.style.display="block",i}var cm={},lo=null;function xd(...i){let t="THREE."+i.shift();lo?lo("log",t,...i):console.log(t,...i)}function _g(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Jt(...i){i=_g(i);let t="THREE."+i.shift();if(lo)lo("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function se(...i){i=_g(i);let t="THREE."+i.shift();if(lo)lo("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Jo(...i){let t=i.join(" ");t in cm||(cm[t]=!0,Jt(...i))}function xg(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var yg={[zl]:zl,[Gl]:Xl,[Hl]:Hl,[oo]:Wl,[Vl]:Vl,[Xl]:Gl,[$l]:$l,[Wl]:oo},Di=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Fn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],hm=1234567,jo=Math.PI/180,co=180/Math.PI;function bo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Fn[i&255]+Fn[i>>8&255]+Fn[i>>16&255]+Fn[i>>24&255]+"-"+Fn[t&255]+Fn[t>>8&255]+"-"+Fn[t>>16&15|64]+Fn[t>>24&255]+"-"+Fn[e&63|128]+Fn[e>>8&255]+"-"+Fn[e>>16&255]+Fn[e>>24&255]+Fn[n&255]+Fn[n>>8&255]+Fn[n>>16&255]+Fn[n>>24&255]).toLowerCase()}function _e(i,t,e){return Math.max(t,Math.min(e,i))}function yd(i,t){return(i%t+t)%t}function ny(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function iy(i,t,e){return i!==t?(e-i)/(t-i):0}function Ko(i,t,e){return(1-e)*i+e*t}function sy(i,t,e,n){return Ko(i,t,1-Math.exp(-e*n))}function ry(i,t=1){return t-Math.abs(yd(i,t*2)-t)}function oy(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function ay(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function ly(i,t){return i+Math.floor(Math.random()*(t-i+1))}function cy(i,t){return i+Math.random()*(t-i)}function hy(i){return i*(.5-Math.random())}function uy(i){i!==void 0&&(hm=i);let t=hm+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function dy(i){return i*jo}function fy(i){return i*co}function py(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function my(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function vd(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function gy(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),u=o((t+n)/2),h=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*u,l*h,l*d,a*c);break;case"YZY":i.set(l*d,a*u,l*h,a*c);break;case"ZXZ":i.set(l*h,l*d,a*u,a*c);break;case"XZX":i.set(a*u,l*g,l*f,a*c);break;case"YXY":i.set(l*f,a*u,l*g,a*c);break;case"ZYZ":i.set(l*g,l*f,a*u,a*c);break;default:Jt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function bd(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function vg(i,t){if(t.constructor===Float32Array)return i;let e=bd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function bg(i,t){if(t.constructor===Float32Array)return i;let e=bd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var Md={DEG2RAD:jo,RAD2DEG:co,generateUUID:bo,clamp:_e,euclideanModulo:yd,mapLinear:ny,inverseLerp:iy,lerp:Ko,damp:sy,pingpong:ry,smoothstep:oy,smootherstep:ay,randInt:ly,randFloat:cy,randFloatSpread:hy,seededRandom:uy,degToRad:dy,radToDeg:fy,isPowerOfTwo:py,ceilPowerOfTwo:my,floorPowerOfTwo:vd,setQuaternionFromProperEuler:gy,normalize:bg,denormalize:vg},re=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},di=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],u=n[s+2],h=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],_=r[o+3];if(h!==_||l!==d||c!==f||u!==g){let p=l*d+c*f+u*g+h*_;p<0&&(d=-d,f=-f,g=-g,_=-_,p=-p);let m=1-a;if(p<.9995){let x=Math.acos(p),A=Math.sin(x);m=Math.sin(m*x)/A,a=Math.sin(a*x)/A,l=l*m+d*a,c=c*m+f*a,u=u*m+g*a,h=h*m+_*a}else{l=l*m+d*a,c=c*m+f*a,u=u*m+g*a,h=h*m+_*a;let x=1/Math.sqrt(l*l+c*c+u*u+h*h);l*=x,c*=x,u*=x,h*=x}}t[e]=l,t[e+1]=c,t[e+2]=u,t[e+3]=h}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],u=n[s+3],h=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+u*h+l*f-c*d,t[e+1]=l*g+u*d+c*h-a*f,t[e+2]=c*g+u*f+a*d-l*h,t[e+3]=u*g-a*h-l*d-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),u=a(s/2),h=a(r/2),d=l(n/2),f=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=d*u*h+c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h-d*f*g;break;case"YXZ":this._x=d*u*h+c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h+d*f*g;break;case"ZXY":this._x=d*u*h-c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h-d*f*g;break;case"ZYX":this._x=d*u*h-c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h+d*f*g;break;case"YZX":this._x=d*u*h+c*f*g,this._y=c*f*h+d*u*g,this._z=c*u*g-d*f*h,this._w=c*u*h-d*f*g;break;case"XZY":this._x=d*u*h-c*f*g,this._y=c*f*h-d*u*g,this._z=c*u*g+d*f*h,this._w=c*u*h+d*f*g;break;default:Jt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],u=e[6],h=e[10],d=n+a+h;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(u-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>h){let f=2*Math.sqrt(1+n-a-h);this._w=(u-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>h){let f=2*Math.sqrt(1+a-n-h);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+u)/f}else{let f=2*Math.sqrt(1+h-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+u)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(_e(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,u=e._w;return this._x=n*u+o*a+s*c-r*l,this._y=s*u+o*l+r*a-n*c,this._z=r*u+o*c+n*l-s*a,this._w=o*u-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,e=Math.sin(e*c)/u,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},$=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(um.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(um.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),u=2*(a*e-r*s),h=2*(r*n-o*e);return this.x=e+l*c+o*h-a*u,this.y=n+l*u+a*c-r*h,this.z=s+l*h+r*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return yu.copy(this).projectOnVector(t),this.sub(yu)}reflect(t){return this.sub(yu.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},yu=new $,um=new di,oe=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=s,u[2]=a,u[3]=e,u[4]=r,u[5]=l,u[6]=n,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],u=n[4],h=n[7],d=n[2],f=n[5],g=n[8],_=s[0],p=s[3],m=s[6],x=s[1],A=s[4],b=s[7],R=s[2],w=s[5],y=s[8];return r[0]=o*_+a*x+l*R,r[3]=o*p+a*A+l*w,r[6]=o*m+a*b+l*y,r[1]=c*_+u*x+h*R,r[4]=c*p+u*A+h*w,r[7]=c*m+u*b+h*y,r[2]=d*_+f*x+g*R,r[5]=d*p+f*A+g*w,r[8]=d*m+f*b+g*y,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return e*o*u-e*a*c-n*r*u+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=u*o-a*c,d=a*l-u*r,f=c*r-o*l,g=e*h+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let _=1/g;return t[0]=h*_,t[1]=(s*c-u*n)*_,t[2]=(a*n-s*o)*_,t[3]=d*_,t[4]=(u*e-s*l)*_,t[5]=(s*r-a*e)*_,t[6]=f*_,t[7]=(n*l-c*e)*_,t[8]=(o*e-n*r)*_,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Jo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(vu.makeScale(t,e)),this}rotate(t){return Jo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(vu.makeRotation(-t)),this}translate(t,e){return Jo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(vu.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},vu=new oe,dm=new oe().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),fm=new oe().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function _y(){let i={enabled:!0,workingColorSpace:ta,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Ie&&(s.r=fs(s.r),s.g=fs(s.g),s.b=fs(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Ie&&(s.r=ro(s.r),s.g=ro(s.g),s.b=ro(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===bs?ea:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[ta]:{primaries:t,whitePoint:n,transfer:ea,toXYZ:dm,fromXYZ:fm,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:ui},outputColorSpaceConfig:{drawingBufferColorSpace:ui}},[ui]:{primaries:t,whitePoint:n,transfer:Ie,toXYZ:dm,fromXYZ:fm,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:ui}}}),i}var be=_y();function fs(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function ro(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var $r,Jl=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{$r===void 0&&($r=na("canvas")),$r.width=t.width,$r.height=t.height;let s=$r.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=$r}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=na("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=fs(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(fs(e[n]/255)*255):e[n]=fs(e[n]);return{data:e,width:t.width,height:t.height}}else return Jt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},xy=0,ho=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:xy++}),this.uuid=bo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(bu(s[o].image)):r.push(bu(s[o]))}else r=bu(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function bu(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Jl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Jt("Texture: Unable to serialize Texture."),{})}var yy=0,Mu=new $,Qn=class i extends Di{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Yi,s=Yi,r=Jn,o=ys,a=Bi,l=ti,c=i.DEFAULT_ANISOTROPY,u=bs){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:yy++}),this.uuid=bo(),this.name="",this.source=new ho(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new re(0,0),this.repeat=new re(1,1),this.center=new re(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new oe,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Mu).x}get height(){return this.source.getSize(Mu).y}get depth(){return this.source.getSize(Mu).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Jt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Jt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==od)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case ql:t.x=t.x-Math.floor(t.x);break;case Yi:t.x=t.x<0?0:1;break;case Yl:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case ql:t.y=t.y-Math.floor(t.y);break;case Yi:t.y=t.y<0?0:1;break;case Yl:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Qn.DEFAULT_IMAGE=null;Qn.DEFAULT_MAPPING=od;Qn.DEFAULT_ANISOTROPY=1;var Ye=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],u=l[4],h=l[8],d=l[1],f=l[5],g=l[9],_=l[2],p=l[6],m=l[10];if(Math.abs(u-d)<.01&&Math.abs(h-_)<.01&&Math.abs(g-p)<.01){if(Math.abs(u+d)<.1&&Math.abs(h+_)<.1&&Math.abs(g+p)<.1&&Math.abs(c+f+m-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let A=(c+1)/2,b=(f+1)/2,R=(m+1)/2,w=(u+d)/4,y=(h+_)/4,M=(g+p)/4;return A>b&&A>R?A<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(A),s=w/n,r=y/n):b>R?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=w/s,r=M/s):R<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(R),n=y/r,s=M/r),this.set(n,s,r,e),this}let x=Math.sqrt((p-g)*(p-g)+(h-_)*(h-_)+(d-u)*(d-u));return Math.abs(x)<.001&&(x=1),this.x=(p-g)/x,this.y=(h-_)/x,this.z=(d-u)/x,this.w=Math.acos((c+f+m-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this.w=_e(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this.w=_e(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},jl=class extends Di{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Jn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new Ye(0,0,t,e),this.scissorTest=!1,this.viewport=new Ye(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Qn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Jn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new ho(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},fi=class extends jl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},ia=class extends Qn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Kl=class extends Qn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var $e=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p)}set(t,e,n,s,r,o,a,l,c,u,h,d,f,g,_,p){let m=this.elements;return m[0]=t,m[4]=e,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=u,m[10]=h,m[14]=d,m[3]=f,m[7]=g,m[11]=_,m[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/qr.setFromMatrixColumn(t,0).length(),r=1/qr.setFromMatrixColumn(t,1).length(),o=1/qr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),u=Math.cos(r),h=Math.sin(r);if(t.order==="XYZ"){let d=o*u,f=o*h,g=a*u,_=a*h;e[0]=l*u,e[4]=-l*h,e[8]=c,e[1]=f+g*c,e[5]=d-_*c,e[9]=-a*l,e[2]=_-d*c,e[6]=g+f*c,e[10]=o*l}else if(t.order==="YXZ"){let d=l*u,f=l*h,g=c*u,_=c*h;e[0]=d+_*a,e[4]=g*a-f,e[8]=o*c,e[1]=o*h,e[5]=o*u,e[9]=-a,e[2]=f*a-g,e[6]=_+d*a,e[10]=o*l}else if(t.order==="ZXY"){let d=l*u,f=l*h,g=c*u,_=c*h;e[0]=d-_*a,e[4]=-o*h,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*u,e[9]=_-d*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let d=o*u,f=o*h,g=a*u,_=a*h;e[0]=l*u,e[4]=g*c-f,e[8]=d*c+_,e[1]=l*h,e[5]=_*c+d,e[9]=f*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*u,e[4]=_-d*h,e[8]=g*h+f,e[1]=h,e[5]=o*u,e[9]=-a*u,e[2]=-c*u,e[6]=f*h+g,e[10]=d-_*h}else if(t.order==="XZY"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*u,e[4]=-h,e[8]=c*u,e[1]=d*h+_,e[5]=o*u,e[9]=f*h-g,e[2]=g*h-f,e[6]=a*u,e[10]=_*h+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(vy,t,by)}lookAt(t,e,n){let s=this.elements;return ci.subVectors(t,e),ci.lengthSq()===0&&(ci.z=1),ci.normalize(),Ds.crossVectors(n,ci),Ds.lengthSq()===0&&(Math.abs(n.z)===1?ci.x+=1e-4:ci.z+=1e-4,ci.normalize(),Ds.crossVectors(n,ci)),Ds.normalize(),gl.crossVectors(ci,Ds),s[0]=Ds.x,s[4]=gl.x,s[8]=ci.x,s[1]=Ds.y,s[5]=gl.y,s[9]=ci.y,s[2]=Ds.z,s[6]=gl.z,s[10]=ci.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],u=n[1],h=n[5],d=n[9],f=n[13],g=n[2],_=n[6],p=n[10],m=n[14],x=n[3],A=n[7],b=n[11],R=n[15],w=s[0],y=s[4],M=s[8],z=s[12],F=s[1],P=s[5],L=s[9],U=s[13],C=s[2],O=s[6],H=s[10],B=s[14],st=s[3],X=s[7],J=s[11],et=s[15];return r[0]=o*w+a*F+l*C+c*st,r[4]=o*y+a*P+l*O+c*X,r[8]=o*M+a*L+l*H+c*J,r[12]=o*z+a*U+l*B+c*et,r[1]=u*w+h*F+d*C+f*st,r[5]=u*y+h*P+d*O+f*X,r[9]=u*M+h*L+d*H+f*J,r[13]=u*z+h*U+d*B+f*et,r[2]=g*w+_*F+p*C+m*st,r[6]=g*y+_*P+p*O+m*X,r[10]=g*M+_*L+p*H+m*J,r[14]=g*z+_*U+p*B+m*et,r[3]=x*w+A*F+b*C+R*st,r[7]=x*y+A*P+b*O+R*X,r[11]=x*M+A*L+b*H+R*J,r[15]=x*z+A*U+b*B+R*et,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],h=t[6],d=t[10],f=t[14],g=t[3],_=t[7],p=t[11],m=t[15],x=l*f-c*d,A=a*f-c*h,b=a*d-l*h,R=o*f-c*u,w=o*d-l*u,y=o*h-a*u;return e*(_*x-p*A+m*b)-n*(g*x-p*R+m*w)+s*(g*A-_*R+m*y)-r*(g*b-_*w+p*y)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return e*(o*u-a*c)-n*(r*u-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=t[9],d=t[10],f=t[11],g=t[12],_=t[13],p=t[14],m=t[15],x=e*a-n*o,A=e*l-s*o,b=e*c-r*o,R=n*l-s*a,w=n*c-r*a,y=s*c-r*l,M=u*_-h*g,z=u*p-d*g,F=u*m-f*g,P=h*p-d*_,L=h*m-f*_,U=d*m-f*p,C=x*U-A*L+b*P+R*F-w*z+y*M;if(C===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let O=1/C;return t[0]=(a*U-l*L+c*P)*O,t[1]=(s*L-n*U-r*P)*O,t[2]=(_*y-p*w+m*R)*O,t[3]=(d*w-h*y-f*R)*O,t[4]=(l*F-o*U-c*z)*O,t[5]=(e*U-s*F+r*z)*O,t[6]=(p*b-g*y-m*A)*O,t[7]=(u*y-d*b+f*A)*O,t[8]=(o*L-a*F+c*M)*O,t[9]=(n*F-e*L-r*M)*O,t[10]=(g*w-_*b+m*x)*O,t[11]=(h*b-u*w-f*x)*O,t[12]=(a*z-o*P-l*M)*O,t[13]=(e*P-n*z+s*M)*O,t[14]=(_*A-g*R-p*x)*O,t[15]=(u*R-h*A+d*x)*O,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,u=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,u*a+n,u*l-s*o,0,c*l-s*a,u*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,u=o+o,h=a+a,d=r*c,f=r*u,g=r*h,_=o*u,p=o*h,m=a*h,x=l*c,A=l*u,b=l*h,R=n.x,w=n.y,y=n.z;return s[0]=(1-(_+m))*R,s[1]=(f+b)*R,s[2]=(g-A)*R,s[3]=0,s[4]=(f-b)*w,s[5]=(1-(d+m))*w,s[6]=(p+x)*w,s[7]=0,s[8]=(g+A)*y,s[9]=(p-x)*y,s[10]=(1-(d+_))*y,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=qr.set(s[0],s[1],s[2]).length(),a=qr.set(s[4],s[5],s[6]).length(),l=qr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ci.copy(this);let c=1/o,u=1/a,h=1/l;return Ci.elements[0]*=c,Ci.elements[1]*=c,Ci.elements[2]*=c,Ci.elements[4]*=u,Ci.elements[5]*=u,Ci.elements[6]*=u,Ci.elements[8]*=h,Ci.elements[9]*=h,Ci.elements[10]*=h,e.setFromRotationMatrix(Ci),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=bi,l=!1){let c=this.elements,u=2*r/(e-t),h=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,_;if(l)g=r/(o-r),_=o*r/(o-r);else if(a===bi)g=-(o+r)/(o-r),_=-2*o*r/(o-r);else if(a===ao)g=-o/(o-r),_=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=h,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=bi,l=!1){let c=this.elements,u=2/(e-t),h=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,_;if(l)g=1/(o-r),_=o/(o-r);else if(a===bi)g=-2/(o-r),_=-(o+r)/(o-r);else if(a===ao)g=-1/(o-r),_=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=h,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},qr=new $,Ci=new $e,vy=new $(0,0,0),by=new $(1,1,1),Ds=new $,gl=new $,ci=new $,pm=new $e,mm=new di,ms=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],u=s[9],h=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(_e(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-_e(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-h,r),this._z=0);break;case"ZXY":this._x=Math.asin(_e(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-h,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-_e(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(_e(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-h,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-_e(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-u,f),this._y=0);break;default:Jt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return pm.makeRotationFromQuaternion(t),this.setFromRotationMatrix(pm,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return mm.setFromEuler(this),this.setFromQuaternion(mm,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ms.DEFAULT_ORDER="XYZ";var sa=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},My=0,gm=new $,Yr=new di,ls=new $e,_l=new $,Xo=new $,Sy=new $,wy=new di,_m=new $(1,0,0),xm=new $(0,1,0),ym=new $(0,0,1),vm={type:"added"},Ey={type:"removed"},Zr={type:"childadded",child:null},Su={type:"childremoved",child:null},kn=class i extends Di{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:My++}),this.uuid=bo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new $,e=new ms,n=new di,s=new $(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new $e},normalMatrix:{value:new oe}}),this.matrix=new $e,this.matrixWorld=new $e,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new sa,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Yr.setFromAxisAngle(t,e),this.quaternion.multiply(Yr),this}rotateOnWorldAxis(t,e){return Yr.setFromAxisAngle(t,e),this.quaternion.premultiply(Yr),this}rotateX(t){return this.rotateOnAxis(_m,t)}rotateY(t){return this.rotateOnAxis(xm,t)}rotateZ(t){return this.rotateOnAxis(ym,t)}translateOnAxis(t,e){return gm.copy(t).applyQuaternion(this.quaternion),this.position.add(gm.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(_m,t)}translateY(t){return this.translateOnAxis(xm,t)}translateZ(t){return this.translateOnAxis(ym,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(ls.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?_l.copy(t):_l.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Xo.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ls.lookAt(Xo,_l,this.up):ls.lookAt(_l,Xo,this.up),this.quaternion.setFromRotationMatrix(ls),s&&(ls.extractRotation(s.matrixWorld),Yr.setFromRotationMatrix(ls),this.quaternion.premultiply(Yr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(se("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(vm),Zr.child=t,this.dispatchEvent(Zr),Zr.child=null):se("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(Ey),Su.child=t,this.dispatchEvent(Su),Su.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),ls.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),ls.multiply(t.parent.matrixWorld)),t.applyMatrix4(ls),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(vm),Zr.child=t,this.dispatchEvent(Zr),Zr.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Xo,t,Sy),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Xo,wy,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let h=l[c];r(t.shapes,h)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),h=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),u.length>0&&(n.images=u),h.length>0&&(n.shapes=h),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};kn.DEFAULT_UP=new $(0,1,0);kn.DEFAULT_MATRIX_AUTO_UPDATE=!0;kn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Li=class extends kn{constructor(){super(),this.isGroup=!0,this.type="Group"}},Ty={type:"move"},uo=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Li,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Li,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new $,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new $),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Li,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new $,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new $,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let _ of t.hand.values()){let p=e.getJointPose(_,n),m=this._getHandJoint(c,_);p!==null&&(m.matrix.fromArray(p.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=p.radius),m.visible=p!==null}let u=c.joints["index-finger-tip"],h=c.joints["thumb-tip"],d=u.position.distanceTo(h.position),f=.02,g=.005;c.inputState.pinching&&d>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&d<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(Ty)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Li;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},Mg={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ns={h:0,s:0,l:0},xl={h:0,s:0,l:0};function wu(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var le=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=ui){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,be.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=be.workingColorSpace){return this.r=t,this.g=e,this.b=n,be.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=be.workingColorSpace){if(t=yd(t,1),e=_e(e,0,1),n=_e(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=wu(o,r,t+1/3),this.g=wu(o,r,t),this.b=wu(o,r,t-1/3)}return be.colorSpaceToWorking(this,s),this}setStyle(t,e=ui){function n(r){r!==void 0&&parseFloat(r)<1&&Jt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Jt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Jt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=ui){let n=Mg[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Jt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=fs(t.r),this.g=fs(t.g),this.b=fs(t.b),this}copyLinearToSRGB(t){return this.r=ro(t.r),this.g=ro(t.g),this.b=ro(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=ui){return be.workingToColorSpace(On.copy(this),t),Math.round(_e(On.r*255,0,255))*65536+Math.round(_e(On.g*255,0,255))*256+Math.round(_e(On.b*255,0,255))}getHexString(t=ui){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=be.workingColorSpace){be.workingToColorSpace(On.copy(this),e);let n=On.r,s=On.g,r=On.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let h=o-a;switch(c=u<=.5?h/(o+a):h/(2-o-a),o){case n:l=(s-r)/h+(s<r?6:0);break;case s:l=(r-n)/h+2;break;case r:l=(n-s)/h+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,e=be.workingColorSpace){return be.workingToColorSpace(On.copy(this),e),t.r=On.r,t.g=On.g,t.b=On.b,t}getStyle(t=ui){be.workingToColorSpace(On.copy(this),t);let e=On.r,n=On.g,s=On.b;return t!==ui?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Ns),this.setHSL(Ns.h+t,Ns.s+e,Ns.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Ns),t.getHSL(xl);let n=Ko(Ns.h,xl.h,e),s=Ko(Ns.s,xl.s,e),r=Ko(Ns.l,xl.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},On=new le;le.NAMES=Mg;var ra=class extends kn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ms,this.environmentIntensity=1,this.environmentRotation=new ms,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Pi=new $,cs=new $,Eu=new $,hs=new $,Jr=new $,jr=new $,bm=new $,Tu=new $,Au=new $,Ru=new $,Cu=new Ye,Pu=new Ye,Iu=new Ye,Bs=class i{constructor(t=new $,e=new $,n=new $){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Pi.subVectors(t,e),s.cross(Pi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Pi.subVectors(s,e),cs.subVectors(n,e),Eu.subVectors(t,e);let o=Pi.dot(Pi),a=Pi.dot(cs),l=Pi.dot(Eu),c=cs.dot(cs),u=cs.dot(Eu),h=o*c-a*a;if(h===0)return r.set(0,0,0),null;let d=1/h,f=(c*l-a*u)*d,g=(o*u-a*l)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,hs)===null?!1:hs.x>=0&&hs.y>=0&&hs.x+hs.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,hs)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,hs.x),l.addScaledVector(o,hs.y),l.addScaledVector(a,hs.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return Cu.setScalar(0),Pu.setScalar(0),Iu.setScalar(0),Cu.fromBufferAttribute(t,e),Pu.fromBufferAttribute(t,n),Iu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(Cu,r.x),o.addScaledVector(Pu,r.y),o.addScaledVector(Iu,r.z),o}static isFrontFacing(t,e,n,s){return Pi.subVectors(n,e),cs.subVectors(t,e),Pi.cross(cs).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Pi.subVectors(this.c,this.b),cs.subVectors(this.a,this.b),Pi.cross(cs).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Jr.subVectors(s,n),jr.subVectors(r,n),Tu.subVectors(t,n);let l=Jr.dot(Tu),c=jr.dot(Tu);if(l<=0&&c<=0)return e.copy(n);Au.subVectors(t,s);let u=Jr.dot(Au),h=jr.dot(Au);if(u>=0&&h<=u)return e.copy(s);let d=l*h-u*c;if(d<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),e.copy(n).addScaledVector(Jr,o);Ru.subVectors(t,r);let f=Jr.dot(Ru),g=jr.dot(Ru);if(g>=0&&f<=g)return e.copy(r);let _=f*c-l*g;if(_<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(jr,a);let p=u*g-f*h;if(p<=0&&h-u>=0&&f-g>=0)return bm.subVectors(r,s),a=(h-u)/(h-u+(f-g)),e.copy(s).addScaledVector(bm,a);let m=1/(p+_+d);return o=_*m,a=d*m,e.copy(n).addScaledVector(Jr,o).addScaledVector(jr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},ks=class{constructor(t=new $(1/0,1/0,1/0),e=new $(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ii.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ii.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ii.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ii):Ii.fromBufferAttribute(r,o),Ii.applyMatrix4(t.matrixWorld),this.expandByPoint(Ii);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),yl.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),yl.copy(n.boundingBox)),yl.applyMatrix4(t.matrixWorld),this.union(yl)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ii),Ii.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter($o),vl.subVectors(this.max,$o),Kr.subVectors(t.a,$o),Qr.subVectors(t.b,$o),to.subVectors(t.c,$o),Us.subVectors(Qr,Kr),Fs.subVectors(to,Qr),ar.subVectors(Kr,to);let e=[0,-Us.z,Us.y,0,-Fs.z,Fs.y,0,-ar.z,ar.y,Us.z,0,-Us.x,Fs.z,0,-Fs.x,ar.z,0,-ar.x,-Us.y,Us.x,0,-Fs.y,Fs.x,0,-ar.y,ar.x,0];return!Lu(e,Kr,Qr,to,vl)||(e=[1,0,0,0,1,0,0,0,1],!Lu(e,Kr,Qr,to,vl))?!1:(bl.crossVectors(Us,Fs),e=[bl.x,bl.y,bl.z],Lu(e,Kr,Qr,to,vl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ii).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ii).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(us[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),us[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),us[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),us[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),us[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),us[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),us[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),us[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(us),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},us=[new $,new $,new $,new $,new $,new $,new $,new $],Ii=new $,yl=new ks,Kr=new $,Qr=new $,to=new $,Us=new $,Fs=new $,ar=new $,$o=new $,vl=new $,bl=new $,lr=new $;function Lu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){lr.fromArray(i,r);let a=s.x*Math.abs(lr.x)+s.y*Math.abs(lr.y)+s.z*Math.abs(lr.z),l=t.dot(lr),c=e.dot(lr),u=n.dot(lr);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var fn=new $,Ml=new re,Ay=0,Bn=class extends Di{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Ay++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=mg,this.updateRanges=[],this.gpuType=Fi,this.version=0,this._normalizationScale=t!==void 0?bd(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)Ml.fromBufferAttribute(this,e),Ml.applyMatrix3(t),this.setXY(e,Ml.x,Ml.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix3(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix4(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyNormalMatrix(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.transformDirection(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):vg(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):bg(t,this.array)}};var oa=class extends Bn{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var aa=class extends Bn{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Dn=class extends Bn{constructor(t,e,n){super(new Float32Array(t),e,n)}},Ry=new ks,qo=new $,Du=new $,ur=class{constructor(t=new $,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):Ry.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;qo.subVectors(t,this.center);let e=qo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(qo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Du.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(qo.copy(t.center).add(Du)),this.expandByPoint(qo.copy(t.center).sub(Du))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},Cy=0,vi=new $e,Nu=new kn,eo=new $,hi=new ks,Yo=new ks,Rn=new $,zn=class i extends Di{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Cy++}),this.uuid=bo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(ty(t)?aa:oa)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new oe().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return vi.makeRotationFromQuaternion(t),this.applyMatrix4(vi),this}rotateX(t){return vi.makeRotationX(t),this.applyMatrix4(vi),this}rotateY(t){return vi.makeRotationY(t),this.applyMatrix4(vi),this}rotateZ(t){return vi.makeRotationZ(t),this.applyMatrix4(vi),this}translate(t,e,n){return vi.makeTranslation(t,e,n),this.applyMatrix4(vi),this}scale(t,e,n){return vi.makeScale(t,e,n),this.applyMatrix4(vi),this}lookAt(t){return Nu.lookAt(t),Nu.updateMatrix(),this.applyMatrix4(Nu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(eo).negate(),this.translate(eo.x,eo.y,eo.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Dn(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Jt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new ks);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){se("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new $(-1/0,-1/0,-1/0),new $(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];hi.setFromBufferAttribute(r),this.morphTargetsRelative?(Rn.addVectors(this.boundingBox.min,hi.min),this.boundingBox.expandByPoint(Rn),Rn.addVectors(this.boundingBox.max,hi.max),this.boundingBox.expandByPoint(Rn)):(this.boundingBox.expandByPoint(hi.min),this.boundingBox.expandByPoint(hi.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&se('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ur);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){se("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new $,1/0);return}if(t){let n=this.boundingSphere.center;if(hi.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Yo.setFromBufferAttribute(a),this.morphTargetsRelative?(Rn.addVectors(hi.min,Yo.min),hi.expandByPoint(Rn),Rn.addVectors(hi.max,Yo.max),hi.expandByPoint(Rn)):(hi.expandByPoint(Yo.min),hi.expandByPoint(Yo.max))}hi.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Rn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Rn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)Rn.fromBufferAttribute(a,c),l&&(eo.fromBufferAttribute(t,c),Rn.add(eo)),s=Math.max(s,n.distanceToSquared(Rn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&se('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){se("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Bn(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let z=0;z<n.count;z++)a[z]=new $,l[z]=new $;let u=new $,h=new $,d=new $,f=new re,g=new re,_=new re,p=new $,m=new $;function x(z,F,P){c[z]=c[F]=c[P]=1,u.fromBufferAttribute(n,z),h.fromBufferAttribute(n,F),d.fromBufferAttribute(n,P),f.fromBufferAttribute(r,z),g.fromBufferAttribute(r,F),_.fromBufferAttribute(r,P),h.sub(u),d.sub(u),g.sub(f),_.sub(f);let L=1/(g.x*_.y-_.x*g.y);isFinite(L)&&(p.copy(h).multiplyScalar(_.y).addScaledVector(d,-g.y).multiplyScalar(L),m.copy(d).multiplyScalar(g.x).addScaledVector(h,-_.x).multiplyScalar(L),a[z].add(p),a[F].add(p),a[P].add(p),l[z].add(m),l[F].add(m),l[P].add(m))}let A=this.groups;A.length===0&&(A=[{start:0,count:t.count}]);for(let z=0,F=A.length;z<F;++z){let P=A[z],L=P.start,U=P.count;for(let C=L,O=L+U;C<O;C+=3)x(t.getX(C+0),t.getX(C+1),t.getX(C+2))}let b=new $,R=new $,w=new $,y=new $;function M(z){w.fromBufferAttribute(s,z),y.copy(w);let F=a[z];b.copy(F),b.sub(w.multiplyScalar(w.dot(F))).normalize(),R.crossVectors(y,F);let L=R.dot(l[z])<0?-1:1;o.setXYZW(z,b.x,b.y,b.z,L)}for(let z=0,F=n.count;z<F;++z)c[z]&&M(z);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Bn(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new $,r=new $,o=new $,a=new $,l=new $,c=new $,u=new $,h=new $;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),_=t.getX(d+1),p=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,_),o.fromBufferAttribute(e,p),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,_),c.fromBufferAttribute(n,p),a.add(u),l.add(u),c.add(u),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(_,l.x,l.y,l.z),n.setXYZ(p,c.x,c.y,c.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),n.setXYZ(d+0,u.x,u.y,u.z),n.setXYZ(d+1,u.x,u.y,u.z),n.setXYZ(d+2,u.x,u.y,u.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Rn.fromBufferAttribute(t,e),Rn.normalize(),t.setXYZ(e,Rn.x,Rn.y,Rn.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,h=a.normalized,d=new c.constructor(l.length*u),f=0,g=0;for(let _=0,p=l.length;_<p;_++){a.isInterleavedBufferAttribute?f=l[_]*a.data.stride+a.offset:f=l[_]*u;for(let m=0;m<u;m++)d[g++]=c[f++]}return new Bn(d,u,h)}if(this.index===null)return Jt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let u=0,h=c.length;u<h;u++){let d=c[u],f=t(d,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let h=0,d=c.length;h<d;h++){let f=c[h];u.push(f.toJSON(t.data))}u.length>0&&(s[l]=u,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let u=s[c];this.setAttribute(c,u.clone(e))}let r=t.morphAttributes;for(let c in r){let u=[],h=r[c];for(let d=0,f=h.length;d<f;d++)u.push(h[d].clone(e));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let h=o[c];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var Uu=new $,Py=new $,Iy=new oe,Yn=class{constructor(t=new $(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=Uu.subVectors(n,e).cross(Py.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(Uu),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Iy.getNormalMatrix(t),s=this.coplanarPoint(Uu).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},Ly=0,gs=class extends Di{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Ly++}),this.uuid=bo(),this.name="",this.type="Material",this.blending=xo,this.side=Ni,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=ju,this.blendDst=Ku,this.blendEquation=mr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new le(0,0,0),this.blendAlpha=0,this.depthFunc=oo,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=cg,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=kl,this.stencilZFail=kl,this.stencilZPass=kl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Jt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Jt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new le().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new Yn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new re().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new re().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ds=new $,Fu=new $,Sl=new $,wl=new $,dr=class{constructor(t=new $,e=new $(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ds)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ds.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ds.copy(this.origin).addScaledVector(this.direction,e),ds.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){Fu.copy(t).add(e).multiplyScalar(.5),Sl.copy(e).sub(t).normalize(),wl.copy(this.origin).sub(Fu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(Sl),a=wl.dot(this.direction),l=-wl.dot(Sl),c=wl.lengthSq(),u=Math.abs(1-o*o),h,d,f,g;if(u>0)if(h=o*l-a,d=o*a-l,g=r*u,h>=0)if(d>=-g)if(d<=g){let _=1/u;h*=_,d*=_,f=h*(h+o*d+2*a)+d*(o*h+d+2*l)+c}else d=r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;else d=-r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;else d<=-g?(h=Math.max(0,-(-o*r+a)),d=h>0?-r:Math.min(Math.max(-r,-l),r),f=-h*h+d*(d+2*l)+c):d<=g?(h=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(h=Math.max(0,-(o*r+a)),d=h>0?r:Math.min(Math.max(-r,-l),r),f=-h*h+d*(d+2*l)+c);else d=o>0?-r:r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,h),s&&s.copy(Fu).addScaledVector(Sl,d),f}intersectSphere(t,e){if(t.radius<0)return null;ds.subVectors(t.center,this.origin);let n=ds.dot(this.direction),s=ds.dot(ds)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,d=this.origin;return c>=0?(n=(t.min.x-d.x)*c,s=(t.max.x-d.x)*c):(n=(t.max.x-d.x)*c,s=(t.min.x-d.x)*c),u>=0?(r=(t.min.y-d.y)*u,o=(t.max.y-d.y)*u):(r=(t.max.y-d.y)*u,o=(t.min.y-d.y)*u),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),h>=0?(a=(t.min.z-d.z)*h,l=(t.max.z-d.z)*h):(a=(t.max.z-d.z)*h,l=(t.min.z-d.z)*h),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ds)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,h=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,_=e.y-o.y,p=e.z-o.z,m=n.x-o.x,x=n.y-o.y,A=n.z-o.z,b=Math.abs(l),R=Math.abs(c),w=Math.abs(u),y,M,z,F,P,L,U,C,O,H,B,st;if(b>=R&&b>=w?(z=l,L=h,O=g,st=m,l>=0?(y=c,M=u,F=d,P=f,U=_,C=p,H=x,B=A):(y=u,M=c,F=f,P=d,U=p,C=_,H=A,B=x)):R>=w?(z=c,L=d,O=_,st=x,c>=0?(y=u,M=l,F=f,P=h,U=p,C=g,H=A,B=m):(y=l,M=u,F=h,P=f,U=g,C=p,H=m,B=A)):(z=u,L=f,O=p,st=A,u>=0?(y=l,M=c,F=h,P=d,U=g,C=_,H=m,B=x):(y=c,M=l,F=d,P=h,U=_,C=g,H=x,B=m)),z===0)return null;let X=y/z,J=M/z,et=1/z,ft=F-X*L,lt=P-J*L,K=U-X*O,dt=C-J*O,rt=H-X*st,_t=B-J*st,xt=rt*dt-_t*K,gt=ft*_t-lt*rt,It=K*lt-dt*ft;if(s){if(xt<0||gt<0||It<0)return null}else if((xt<0||gt<0||It<0)&&(xt>0||gt>0||It>0))return null;let Ut=xt+gt+It;if(Ut===0)return null;let ee=et*(xt*L+gt*O+It*st);return(Ut>0?ee<0:ee>0)?null:this.at(ee/Ut,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},_s=class extends gs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new le(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=xc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Mm=new $e,cr=new dr,El=new ur,Sm=new $,Tl=new $,Al=new $,Rl=new $,Ou=new $,Cl=new $,wm=new $,Pl=new $,Pn=class extends kn{constructor(t=new zn,e=new _s){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){Cl.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let u=a[l],h=r[l];u!==0&&(Ou.fromBufferAttribute(h,t),o?Cl.addScaledVector(Ou,u):Cl.addScaledVector(Ou.sub(e),u))}e.add(Cl)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),El.copy(n.boundingSphere),El.applyMatrix4(r),cr.copy(t.ray).recast(t.near),!(El.containsPoint(cr.origin)===!1&&(cr.intersectSphere(El,Sm)===null||cr.origin.distanceToSquared(Sm)>(t.far-t.near)**2))&&(Mm.copy(r).invert(),cr.copy(t.ray).applyMatrix4(Mm),!(n.boundingBox!==null&&cr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,cr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,u=r.attributes.uv1,h=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],x=Math.max(p.start,f.start),A=Math.min(a.count,Math.min(p.start+p.count,f.start+f.count));for(let b=x,R=A;b<R;b+=3){let w=a.getX(b),y=a.getX(b+1),M=a.getX(b+2);s=Il(this,m,t,n,c,u,h,w,y,M),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(a.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let x=a.getX(p),A=a.getX(p+1),b=a.getX(p+2);s=Il(this,o,t,n,c,u,h,x,A,b),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let p=d[g],m=o[p.materialIndex],x=Math.max(p.start,f.start),A=Math.min(l.count,Math.min(p.start+p.count,f.start+f.count));for(let b=x,R=A;b<R;b+=3){let w=b,y=b+1,M=b+2;s=Il(this,m,t,n,c,u,h,w,y,M),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(l.count,f.start+f.count);for(let p=g,m=_;p<m;p+=3){let x=p,A=p+1,b=p+2;s=Il(this,o,t,n,c,u,h,x,A,b),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}}};function Dy(i,t,e,n,s,r,o,a){let l;if(t.side===Nn?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Ni,a),l===null)return null;Pl.copy(a),Pl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(Pl);return c<e.near||c>e.far?null:{distance:c,point:Pl.clone(),object:i}}function Il(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,Tl),i.getVertexPosition(l,Al),i.getVertexPosition(c,Rl);let u=Dy(i,t,e,n,Tl,Al,Rl,wm);if(u){let h=new $;Bs.getBarycoord(wm,Tl,Al,Rl,h),s&&(u.uv=Bs.getInterpolatedAttribute(s,a,l,c,h,new re)),r&&(u.uv1=Bs.getInterpolatedAttribute(r,a,l,c,h,new re)),o&&(u.normal=Bs.getInterpolatedAttribute(o,a,l,c,h,new $),u.normal.dot(n.direction)>0&&u.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new $,materialIndex:0};Bs.getNormal(Tl,Al,Rl,d.normal),u.face=d,u.barycoord=h}return u}var Ql=class extends Qn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=Cn,u=Cn,h,d){super(null,o,a,l,c,u,s,r,h,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var hr=new ur,Ny=new re(.5,.5),Ll=new $,zs=class{constructor(t=new Yn,e=new Yn,n=new Yn,s=new Yn,r=new Yn,o=new Yn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=bi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],u=r[4],h=r[5],d=r[6],f=r[7],g=r[8],_=r[9],p=r[10],m=r[11],x=r[12],A=r[13],b=r[14],R=r[15];if(s[0].setComponents(c-o,f-u,m-g,R-x).normalize(),s[1].setComponents(c+o,f+u,m+g,R+x).normalize(),s[2].setComponents(c+a,f+h,m+_,R+A).normalize(),s[3].setComponents(c-a,f-h,m-_,R-A).normalize(),n)s[4].setComponents(l,d,p,b).normalize(),s[5].setComponents(c-l,f-d,m-p,R-b).normalize();else if(s[4].setComponents(c-l,f-d,m-p,R-b).normalize(),e===bi)s[5].setComponents(c+l,f+d,m+p,R+b).normalize();else if(e===ao)s[5].setComponents(l,d,p,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),hr.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),hr.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(hr)}intersectsSprite(t){hr.center.set(0,0,0);let e=Ny.distanceTo(t.center);return hr.radius=.7071067811865476+e,hr.applyMatrix4(t.matrixWorld),this.intersectsSphere(hr)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(Ll.x=s.normal.x>0?t.max.x:t.min.x,Ll.y=s.normal.y>0?t.max.y:t.min.y,Ll.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(Ll)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},Em=new $e,tc=class i{constructor(){this.coordinateSystem=bi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];Em.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new zs),n[s].setFromProjectionMatrix(Em,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new zs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Vs=class extends gs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new le(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},ec=new $,nc=new $,Tm=new $e,Zo=new dr,Dl=new ur,Bu=new $,Am=new $,la=class extends kn{constructor(t=new zn,e=new Vs){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)ec.fromBufferAttribute(e,s-1),nc.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=ec.distanceTo(nc);t.setAttribute("lineDistance",new Dn(n,1))}else Jt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Dl.copy(n.boundingSphere),Dl.applyMatrix4(s),Dl.radius+=r,t.ray.intersectsSphere(Dl)===!1)return;Tm.copy(s).invert(),Zo.copy(t.ray).applyMatrix4(Tm);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=n.index,d=n.attributes.position;if(u!==null){let f=Math.max(0,o.start),g=Math.min(u.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=u.getX(_),x=u.getX(_+1),A=Nl(this,t,Zo,l,m,x,_);A&&e.push(A)}if(this.isLineLoop){let _=u.getX(g-1),p=u.getX(f),m=Nl(this,t,Zo,l,_,p,g-1);m&&e.push(m)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let _=f,p=g-1;_<p;_+=c){let m=Nl(this,t,Zo,l,_,_+1,_);m&&e.push(m)}if(this.isLineLoop){let _=Nl(this,t,Zo,l,g-1,f,g-1);_&&e.push(_)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function Nl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(ec.fromBufferAttribute(a,s),nc.fromBufferAttribute(a,r),e.distanceSqToSegment(ec,nc,Bu,Am)>n)return;Bu.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Bu);if(!(c<t.near||c>t.far))return{distance:c,point:Am.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Rm=new $,Cm=new $,fo=class extends la{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Rm.fromBufferAttribute(e,s),Cm.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Rm.distanceTo(Cm);t.setAttribute("lineDistance",new Dn(n,1))}else Jt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},ca=class extends la{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var ha=class extends Qn{constructor(t=[],e=gr,n,s,r,o,a,l,c,u){super(t,e,n,s,r,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var xs=class extends Qn{constructor(t,e,n=Ui,s,r,o,a=Cn,l=Cn,c,u=ps,h=1){if(u!==ps&&u!==vs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:h};super(d,s,r,o,a,l,u,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new ho(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},ua=class extends xs{constructor(t,e=Ui,n=gr,s,r,o=Cn,a=Cn,l,c=ps){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,e,n,s,r,o,a,l,c),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},da=class extends Qn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},po=class i extends zn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],u=[],h=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Dn(c,3)),this.setAttribute("normal",new Dn(u,3)),this.setAttribute("uv",new Dn(h,2));function g(_,p,m,x,A,b,R,w,y,M,z){let F=b/y,P=R/M,L=b/2,U=R/2,C=w/2,O=y+1,H=M+1,B=0,st=0,X=new $;for(let J=0;J<H;J++){let et=J*P-U;for(let ft=0;ft<O;ft++){let lt=ft*F-L;X[_]=lt*x,X[p]=et*A,X[m]=C,c.push(X.x,X.y,X.z),X[_]=0,X[p]=0,X[m]=w>0?1:-1,u.push(X.x,X.y,X.z),h.push(ft/y),h.push(1-J/M),B+=1}}for(let J=0;J<M;J++)for(let et=0;et<y;et++){let ft=d+et+O*J,lt=d+et+O*(J+1),K=d+(et+1)+O*(J+1),dt=d+(et+1)+O*J;l.push(ft,lt,dt),l.push(lt,K,dt),st+=6}a.addGroup(f,st,z),f+=st,d+=B}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var fr=class i extends zn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,u=l+1,h=t/a,d=e/l,f=[],g=[],_=[],p=[];for(let m=0;m<u;m++){let x=m*d-o;for(let A=0;A<c;A++){let b=A*h-r;g.push(b,-x,0),_.push(0,0,1),p.push(A/a),p.push(1-m/l)}}for(let m=0;m<l;m++)for(let x=0;x<a;x++){let A=x+c*m,b=x+c*(m+1),R=x+1+c*(m+1),w=x+1+c*m;f.push(A,b,w),f.push(b,R,w)}this.setIndex(f),this.setAttribute("position",new Dn(g,3)),this.setAttribute("normal",new Dn(_,3)),this.setAttribute("uv",new Dn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var fa=class i extends zn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,u=[],h=new $,d=new $,f=[],g=[],_=[],p=[];for(let m=0;m<=n;m++){let x=[],A=m/n,b=o+A*a,R=t*Math.cos(b),w=Math.sqrt(t*t-R*R),y=0;m===0&&o===0?y=.5/e:m===n&&l===Math.PI&&(y=-.5/e);for(let M=0;M<=e;M++){let z=M/e,F=s+z*r;h.x=-w*Math.cos(F),h.y=R,h.z=w*Math.sin(F),g.push(h.x,h.y,h.z),d.copy(h).normalize(),_.push(d.x,d.y,d.z),p.push(z+y,1-A),x.push(c++)}u.push(x)}for(let m=0;m<n;m++)for(let x=0;x<e;x++){let A=u[m][x+1],b=u[m][x],R=u[m+1][x],w=u[m+1][x+1];(m!==0||o>0)&&f.push(A,b,w),(m!==n-1||l<Math.PI)&&f.push(b,R,w)}this.setIndex(f),this.setAttribute("position",new Dn(g,3)),this.setAttribute("normal",new Dn(_,3)),this.setAttribute("uv",new Dn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function xr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(Pm(s))s.isRenderTargetTexture?(Jt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(Pm(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Vn(i){let t={};for(let e=0;e<i.length;e++){let n=xr(i[e]);for(let s in n)t[s]=n[s]}return t}function Pm(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function Uy(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function Sd(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:be.workingColorSpace}var Sg={clone:xr,merge:Vn},Fy=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Oy=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Zi=class extends gs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Fy,this.fragmentShader=Oy,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=xr(t.uniforms),this.uniformsGroups=Uy(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new le().setHex(s.value);break;case"v2":this.uniforms[n].value=new re().fromArray(s.value);break;case"v3":this.uniforms[n].value=new $().fromArray(s.value);break;case"v4":this.uniforms[n].value=new Ye().fromArray(s.value);break;case"m3":this.uniforms[n].value=new oe().fromArray(s.value);break;case"m4":this.uniforms[n].value=new $e().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},ic=class extends Zi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var pa=class extends gs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new le(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new le(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=sh,this.normalScale=new re(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=xc,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},sc=class extends gs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=ag,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},rc=class extends gs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function no(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function Ul(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Gs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},oc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:Vu,endingEnd:Vu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Gu:r=t,a=2*e-n;break;case Hu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Gu:o=t,l=2*n-e;break;case Hu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,u=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*u,this._offsetNext=o*u}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,h=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),_=g*g,p=_*g,m=-d*p+2*d*_-d*g,x=(1+d)*p+(-1.5-2*d)*_+(-.5+d)*g+1,A=(-1-f)*p+(1.5+f)*_+.5*g,b=f*p-f*_;for(let R=0;R!==a;++R)r[R]=m*o[u+R]+x*o[c+R]+A*o[l+R]+b*o[h+R];return r}},ac=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(n-e)/(s-e),h=1-u;for(let d=0;d!==a;++d)r[d]=o[c+d]*h+o[l+d]*u;return r}},lc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},cc=class extends Gs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let g=(n-e)/(s-e),_=1-g;for(let p=0;p!==a;++p)r[p]=o[c+p]*_+o[l+p]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let _=o[c+g],p=o[l+g],m=f*d+g*2,x=h[m],A=h[m+1],b=t*d+g*2,R=u[b],w=u[b+1],y=ky(n,e,x,R,s);r[g]=wg(y,_,A,w,p)}return r}};function wg(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function By(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function ky(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=wg(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=By(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var pi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=no(e,this.TimeBufferType),this.values=no(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:no(t.times,Array),values:no(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),Ul(t.settings)&&(n.settings={inTangents:no(t.settings.inTangents,Array),outTangents:no(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new lc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new ac(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new oc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new cc(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Qo:e=this.InterpolantFactoryMethodDiscrete;break;case Zl:e=this.InterpolantFactoryMethodLinear;break;case Bl:e=this.InterpolantFactoryMethodSmooth;break;case zu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Jt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Qo;case this.InterpolantFactoryMethodLinear:return Zl;case this.InterpolantFactoryMethodSmooth:return Bl;case this.InterpolantFactoryMethodBezier:return zu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;Ul(this.settings)&&(Im(this.settings.inTangents,t),Im(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;Ul(this.settings)&&(Lm(this.settings.inTangents,t),Lm(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(se("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(se("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){se("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){se("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&ey(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){se("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Bl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(s)l=!0;else{let h=a*n,d=h-n,f=h+n;for(let g=0;g!==n;++g){let _=e[h+g];if(_!==e[d+g]||_!==e[f+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let h=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[h+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,Ul(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Im(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function Lm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}pi.prototype.ValueTypeName="";pi.prototype.TimeBufferType=Float32Array;pi.prototype.ValueBufferType=Float32Array;pi.prototype.DefaultInterpolation=Zl;var Hs=class extends pi{constructor(t,e,n){super(t,e,n)}};Hs.prototype.ValueTypeName="bool";Hs.prototype.ValueBufferType=Array;Hs.prototype.DefaultInterpolation=Qo;Hs.prototype.InterpolantFactoryMethodLinear=void 0;Hs.prototype.InterpolantFactoryMethodSmooth=void 0;var hc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};hc.prototype.ValueTypeName="color";var uc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};uc.prototype.ValueTypeName="number";var dc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let u=c+a;c!==u;c+=4)di.slerpFlat(r,0,o,c-a,o,c,l);return r}},ma=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new dc(this.times,this.values,this.getValueSize(),t)}};ma.prototype.ValueTypeName="quaternion";ma.prototype.InterpolantFactoryMethodSmooth=void 0;var Ws=class extends pi{constructor(t,e,n){super(t,e,n)}};Ws.prototype.ValueTypeName="string";Ws.prototype.ValueBufferType=Array;Ws.prototype.DefaultInterpolation=Qo;Ws.prototype.InterpolantFactoryMethodLinear=void 0;Ws.prototype.InterpolantFactoryMethodSmooth=void 0;var fc=class extends pi{constructor(t,e,n,s){super(t,e,n,s)}};fc.prototype.ValueTypeName="vector";var pc=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(u){a++,r===!1&&s.onStart!==void 0&&s.onStart(u,o,a),r=!0},this.itemEnd=function(u){o++,s.onProgress!==void 0&&s.onProgress(u,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(u){s.onError!==void 0&&s.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,h){return c.push(u,h),this},this.removeHandler=function(u){let h=c.indexOf(u);return h!==-1&&c.splice(h,2),this},this.getHandler=function(u){for(let h=0,d=c.length;h<d;h+=2){let f=c[h],g=c[h+1];if(f.global&&(f.lastIndex=0),f.test(u))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},Eg=new pc,mc=class{constructor(t){this.manager=t!==void 0?t:Eg,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};mc.DEFAULT_MATERIAL_NAME="__DEFAULT";var ga=class extends kn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new le(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var ku=new $e,Dm=new $,Nm=new $,gc=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new re(512,512),this.mapType=ti,this.map=null,this.mapPass=null,this.matrix=new $e,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new zs,this._frameExtents=new re(1,1),this._viewportCount=1,this._viewports=[new Ye(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;Dm.setFromMatrixPosition(t.matrixWorld),e.position.copy(Dm),Nm.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(Nm),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){ku.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(ku,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===ao||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(ku)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},Fl=new $,Ol=new di,qi=new $,_a=class extends kn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new $e,this.projectionMatrix=new $e,this.projectionMatrixInverse=new $e,this.coordinateSystem=bi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(Fl,Ol,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Fl,Ol,qi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(Fl,Ol,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Fl,Ol,qi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Os=new $,Um=new re,Fm=new re,Zn=class extends _a{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=co*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(jo*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return co*2*Math.atan(Math.tan(jo*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Os.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Os.x,Os.y).multiplyScalar(-t/Os.z),Os.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Os.x,Os.y).multiplyScalar(-t/Os.z)}getViewSize(t,e){return this.getViewBounds(t,Um,Fm),e.subVectors(Fm,Um)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(jo*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var xa=class extends _a{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},Wu=class extends gc{constructor(){super(new xa(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},ya=class extends ga{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(kn.DEFAULT_UP),this.updateMatrix(),this.target=new kn,this.shadow=new Wu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},va=class extends ga{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var io=-90,so=1,mo=class extends kn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new Zn(io,so,t,e);s.layers=this.layers,this.add(s);let r=new Zn(io,so,t,e);r.layers=this.layers,this.add(r);let o=new Zn(io,so,t,e);o.layers=this.layers,this.add(o);let a=new Zn(io,so,t,e);a.layers=this.layers,this.add(a);let l=new Zn(io,so,t,e);l.layers=this.layers,this.add(l);let c=new Zn(io,so,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===bi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===ao)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,u]=this.children,h=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let _=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let p=!1;t.isWebGLRenderer===!0?p=t.state.buffers.depth.getReversed():p=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=_,t.setRenderTarget(n,5,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,u),t.setRenderTarget(h,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},_c=class extends Zn{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var wd="\\[\\]\\.:\\/",zy=new RegExp("["+wd+"]","g"),Ed="[^"+wd+"]",Vy="[^"+wd.replace("\\.","")+"]",Gy=/((?:WC+[\/:])*)/.source.replace("WC",Ed),Hy=/(WCOD+)?/.source.replace("WCOD",Vy),Wy=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Ed),Xy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Ed),$y=new RegExp("^"+Gy+Hy+Wy+Xy+"$"),qy=["material","materials","bones","map"],Xu=class{constructor(t,e,n){let s=n||Xe.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},Xe=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(zy,"")}static parseTrackName(t){let e=$y.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);qy.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Jt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){se("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){se("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){se("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){se("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){se("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){se("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){se("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;se("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){se("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){se("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Xe.Composite=Xu;Xe.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Xe.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Xe.prototype.GetterByBindingType=[Xe.prototype._getValue_direct,Xe.prototype._getValue_array,Xe.prototype._getValue_arrayElement,Xe.prototype._getValue_toArray];Xe.prototype.SetterByBindingTypeAndVersioning=[[Xe.prototype._setValue_direct,Xe.prototype._setValue_direct_setNeedsUpdate,Xe.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_array,Xe.prototype._setValue_array_setNeedsUpdate,Xe.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_arrayElement,Xe.prototype._setValue_arrayElement_setNeedsUpdate,Xe.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Xe.prototype._setValue_fromArray,Xe.prototype._setValue_fromArray_setNeedsUpdate,Xe.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var lE=new Float32Array(1);var go=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=_e(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(_e(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var $u=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var ba=class extends Di{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function Td(i,t,e,n){let s=Yy(n);switch(e){case ud:return i*t;case fd:return i*t/s.components*s.byteLength;case Ec:return i*t/s.components*s.byteLength;case qs:return i*t*2/s.components*s.byteLength;case Tc:return i*t*2/s.components*s.byteLength;case dd:return i*t*3/s.components*s.byteLength;case Bi:return i*t*4/s.components*s.byteLength;case Ac:return i*t*4/s.components*s.byteLength;case wa:case Ea:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Ta:case Aa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Cc:case Ic:return Math.max(i,16)*Math.max(t,8)/4;case Rc:case Pc:return Math.max(i,8)*Math.max(t,8)/2;case Lc:case Dc:case Uc:case Fc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Nc:case Ra:case Oc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Bc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case kc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case zc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Vc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Gc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Hc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Wc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Xc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case $c:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case qc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Yc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Zc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Jc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case jc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Kc:case Qc:case th:return Math.ceil(i/4)*Math.ceil(t/4)*16;case eh:case nh:return Math.ceil(i/4)*Math.ceil(t/4)*8;case Ca:case ih:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function Yy(i){switch(i){case ti:case ad:return{byteLength:1,components:1};case vo:case ld:case Oi:return{byteLength:2,components:1};case Sc:case wc:return{byteLength:2,components:4};case Ui:case Mc:case Fi:return{byteLength:4,components:1};case cd:case hd:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Jt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function qg(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function Jy(i){let t=new WeakMap;function e(a,l){let c=a.array,u=a.usage,h=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,u),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:h}}function n(a,l,c){let u=l.array,h=l.updateRanges;if(i.bindBuffer(c,a),h.length===0)i.bufferSubData(c,0,u);else{h.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<h.length;f++){let g=h[d],_=h[f];_.start<=g.start+g.count+1?g.count=Math.max(g.count,_.start+_.count-g.start):(++d,h[d]=_)}h.length=d+1;for(let f=0,g=h.length;f<g;f++){let _=h[f];i.bufferSubData(c,_.start*u.BYTES_PER_ELEMENT,u,_.start,_.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var jy=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Ky=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,Qy=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,tv=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,ev=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,nv=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,iv=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,sv=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,rv=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,ov=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,av=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,lv=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,cv=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,hv=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,uv=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,dv=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,fv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,pv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,mv=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,gv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,_v=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,xv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,yv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,vv=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,bv=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,Mv=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Sv=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,wv=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Ev=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Tv="gl_FragColor = linearToOutputTexel( gl_FragColor );",Av=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Rv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Cv=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Pv=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Iv=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Lv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,Dv=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Nv=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Uv=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Fv=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Ov=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,Bv=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,kv=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,zv=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Vv=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,Gv=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Hv=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,Wv=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Xv=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,$v=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,qv=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Yv=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,Zv=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Jv=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,jv=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Kv=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,Qv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,tb=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,eb=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,nb=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,ib=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,sb=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,rb=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,ob=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,ab=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,lb=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,cb=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,hb=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,ub=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,db=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,fb=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,pb=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,mb=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,gb=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,_b=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,xb=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,yb=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,vb=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,bb=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Mb=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Sb=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,wb=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Eb=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,Tb=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Ab=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Rb=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Cb=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Pb=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Ib=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Lb=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,Db=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,Nb=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Ub=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,Fb=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,Ob=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,Bb=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,kb=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,zb=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,Vb=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,Gb=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,Hb=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,Wb=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,Xb=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,$b=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,qb=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Yb=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,Zb=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,Jb=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,jb=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Kb=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Qb=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,tM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,eM=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,nM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,iM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,sM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,rM=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,oM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,aM=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,lM=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,cM=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,hM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,uM=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,dM=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,fM=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,pM=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,mM=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,gM=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,_M=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,xM=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,yM=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,vM=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,bM=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,MM=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,SM=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,wM=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,EM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,TM=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,AM=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,RM=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,CM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,pe={alphahash_fragment:jy,alphahash_pars_fragment:Ky,alphamap_fragment:Qy,alphamap_pars_fragment:tv,alphatest_fragment:ev,alphatest_pars_fragment:nv,aomap_fragment:iv,aomap_pars_fragment:sv,batching_pars_vertex:rv,batching_vertex:ov,begin_vertex:av,beginnormal_vertex:lv,bsdfs:cv,iridescence_fragment:hv,bumpmap_pars_fragment:uv,clipping_planes_fragment:dv,clipping_planes_pars_fragment:fv,clipping_planes_pars_vertex:pv,clipping_planes_vertex:mv,color_fragment:gv,color_pars_fragment:_v,color_pars_vertex:xv,color_vertex:yv,common:vv,defaultnormal_vertex:bv,displacementmap_pars_vertex:Mv,displacementmap_vertex:Sv,emissivemap_fragment:wv,emissivemap_pars_fragment:Ev,colorspace_fragment:Tv,colorspace_pars_fragment:Av,envmap_fragment:Rv,envmap_common_pars_fragment:Cv,envmap_pars_fragment:Pv,envmap_pars_vertex:Iv,envmap_physical_pars_fragment:Gv,envmap_vertex:Lv,fog_vertex:Dv,fog_pars_vertex:Nv,fog_fragment:Uv,fog_pars_fragment:Fv,gradientmap_pars_fragment:Ov,lightmap_pars_fragment:Bv,lights_lambert_fragment:kv,lights_lambert_pars_fragment:zv,lights_pars_begin:Vv,lights_toon_fragment:Hv,lights_toon_pars_fragment:Wv,lights_phong_fragment:Xv,lights_phong_pars_fragment:$v,lights_physical_fragment:qv,lights_physical_pars_fragment:Yv,lights_fragment_begin:Zv,lights_fragment_maps:Jv,lights_fragment_end:jv,lightprobes_pars_fragment:Kv,logdepthbuf_fragment:Qv,logdepthbuf_pars_fragment:tb,logdepthbuf_pars_vertex:eb,logdepthbuf_vertex:nb,map_fragment:ib,map_pars_fragment:sb,map_particle_fragment:rb,map_particle_pars_fragment:ob,metalnessmap_fragment:ab,metalnessmap_pars_fragment:lb,morphinstance_vertex:cb,morphcolor_vertex:hb,morphnormal_vertex:ub,morphtarget_pars_vertex:db,morphtarget_vertex:fb,normal_fragment_begin:pb,normal_fragment_maps:mb,normal_pars_fragment:gb,normal_pars_vertex:_b,normal_vertex:xb,normalmap_pars_fragment:yb,clearcoat_normal_fragment_begin:vb,clearcoat_normal_fragment_maps:bb,clearcoat_pars_fragment:Mb,iridescence_pars_fragment:Sb,opaque_fragment:wb,packing:Eb,premultiplied_alpha_fragment:Tb,project_vertex:Ab,dithering_fragment:Rb,dithering_pars_fragment:Cb,roughnessmap_fragment:Pb,roughnessmap_pars_fragment:Ib,shadowmap_pars_fragment:Lb,shadowmap_pars_vertex:Db,shadowmap_vertex:Nb,shadowmask_pars_fragment:Ub,skinbase_vertex:Fb,skinning_pars_vertex:Ob,skinning_vertex:Bb,skinnormal_vertex:kb,specularmap_fragment:zb,specularmap_pars_fragment:Vb,tonemapping_fragment:Gb,tonemapping_pars_fragment:Hb,transmission_fragment:Wb,transmission_pars_fragment:Xb,uv_pars_fragment:$b,uv_pars_vertex:qb,uv_vertex:Yb,worldpos_vertex:Zb,background_vert:Jb,background_frag:jb,backgroundCube_vert:Kb,backgroundCube_frag:Qb,cube_vert:tM,cube_frag:eM,depth_vert:nM,depth_frag:iM,distance_vert:sM,distance_frag:rM,equirect_vert:oM,equirect_frag:aM,linedashed_vert:lM,linedashed_frag:cM,meshbasic_vert:hM,meshbasic_frag:uM,meshlambert_vert:dM,meshlambert_frag:fM,meshmatcap_vert:pM,meshmatcap_frag:mM,meshnormal_vert:gM,meshnormal_frag:_M,meshphong_vert:xM,meshphong_frag:yM,meshphysical_vert:vM,meshphysical_frag:bM,meshtoon_vert:MM,meshtoon_frag:SM,points_vert:wM,points_frag:EM,shadow_vert:TM,shadow_frag:AM,sprite_vert:RM,sprite_frag:CM},Ot={common:{diffuse:{value:new le(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new oe},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new oe}},envmap:{envMap:{value:null},envMapRotation:{value:new oe},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new oe}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new oe}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new oe},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new oe},normalScale:{value:new re(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new oe},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new oe}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new oe}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new oe}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new le(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new le(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0},uvTransform:{value:new oe}},sprite:{diffuse:{value:new le(16777215)},opacity:{value:1},center:{value:new re(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new oe},alphaMap:{value:null},alphaMapTransform:{value:new oe},alphaTest:{value:0}}},Ki={basic:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.fog]),vertexShader:pe.meshbasic_vert,fragmentShader:pe.meshbasic_frag},lambert:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},envMapIntensity:{value:1}}]),vertexShader:pe.meshlambert_vert,fragmentShader:pe.meshlambert_frag},phong:{uniforms:Vn([Ot.common,Ot.specularmap,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},specular:{value:new le(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:pe.meshphong_vert,fragmentShader:pe.meshphong_frag},standard:{uniforms:Vn([Ot.common,Ot.envmap,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.roughnessmap,Ot.metalnessmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:pe.meshphysical_vert,fragmentShader:pe.meshphysical_frag},toon:{uniforms:Vn([Ot.common,Ot.aomap,Ot.lightmap,Ot.emissivemap,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.gradientmap,Ot.fog,Ot.lights,{emissive:{value:new le(0)}}]),vertexShader:pe.meshtoon_vert,fragmentShader:pe.meshtoon_frag},matcap:{uniforms:Vn([Ot.common,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,Ot.fog,{matcap:{value:null}}]),vertexShader:pe.meshmatcap_vert,fragmentShader:pe.meshmatcap_frag},points:{uniforms:Vn([Ot.points,Ot.fog]),vertexShader:pe.points_vert,fragmentShader:pe.points_frag},dashed:{uniforms:Vn([Ot.common,Ot.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:pe.linedashed_vert,fragmentShader:pe.linedashed_frag},depth:{uniforms:Vn([Ot.common,Ot.displacementmap]),vertexShader:pe.depth_vert,fragmentShader:pe.depth_frag},normal:{uniforms:Vn([Ot.common,Ot.bumpmap,Ot.normalmap,Ot.displacementmap,{opacity:{value:1}}]),vertexShader:pe.meshnormal_vert,fragmentShader:pe.meshnormal_frag},sprite:{uniforms:Vn([Ot.sprite,Ot.fog]),vertexShader:pe.sprite_vert,fragmentShader:pe.sprite_frag},background:{uniforms:{uvTransform:{value:new oe},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:pe.background_vert,fragmentShader:pe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new oe}},vertexShader:pe.backgroundCube_vert,fragmentShader:pe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:pe.cube_vert,fragmentShader:pe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:pe.equirect_vert,fragmentShader:pe.equirect_frag},distance:{uniforms:Vn([Ot.common,Ot.displacementmap,{referencePosition:{value:new $},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:pe.distance_vert,fragmentShader:pe.distance_frag},shadow:{uniforms:Vn([Ot.lights,Ot.fog,{color:{value:new le(0)},opacity:{value:1}}]),vertexShader:pe.shadow_vert,fragmentShader:pe.shadow_frag}};Ki.physical={uniforms:Vn([Ki.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new oe},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new oe},clearcoatNormalScale:{value:new re(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new oe},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new oe},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new oe},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new oe},sheen:{value:0},sheenColor:{value:new le(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new oe},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new oe},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new oe},transmissionSamplerSize:{value:new re},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new oe},attenuationDistance:{value:0},attenuationColor:{value:new le(0)},specularColor:{value:new le(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new oe},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new oe},anisotropyVector:{value:new re},anisotropyMap:{value:null},anisotropyMapTransform:{value:new oe}}]),vertexShader:pe.meshphysical_vert,fragmentShader:pe.meshphysical_frag};var rh={r:0,b:0,g:0},PM=new $e,Yg=new oe;Yg.set(-1,0,0,0,1,0,0,0,1);function IM(i,t,e,n,s,r){let o=new le(0),a=s===!0?0:1,l,c,u=null,h=0,d=null;function f(x){let A=x.isScene===!0?x.background:null;if(A&&A.isTexture){let b=x.backgroundBlurriness>0;A=t.get(A,b)}return A}function g(x){let A=!1,b=f(x);b===null?p(o,a):b&&b.isColor&&(p(b,1),A=!0);let R=i.xr.getEnvironmentBlendMode();R==="additive"?e.buffers.color.setClear(0,0,0,1,r):R==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||A)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function _(x,A){let b=f(A);b&&b.isCubeTexture?(c===void 0&&(c=new Pn(new po(1,1,1),new Zi({name:"BackgroundCubeMaterial",uniforms:xr(Ki.backgroundCube.uniforms),vertexShader:Ki.backgroundCube.vertexShader,fragmentShader:Ki.backgroundCube.fragmentShader,side:Nn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(R,w,y){this.matrixWorld.copyPosition(y.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=A.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(PM.makeRotationFromEuler(A.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Yg),c.material.toneMapped=be.getTransfer(b.colorSpace)!==Ie,(u!==b||h!==b.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,u=b,h=b.version,d=i.toneMapping),c.layers.enableAll(),x.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new Pn(new fr(2,2),new Zi({name:"BackgroundMaterial",uniforms:xr(Ki.background.uniforms),vertexShader:Ki.background.vertexShader,fragmentShader:Ki.background.fragmentShader,side:Ni,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,l.material.toneMapped=be.getTransfer(b.colorSpace)!==Ie,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(u!==b||h!==b.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,u=b,h=b.version,d=i.toneMapping),l.layers.enableAll(),x.unshift(l,l.geometry,l.material,0,0,null))}function p(x,A){x.getRGB(rh,Sd(i)),e.buffers.color.setClear(rh.r,rh.g,rh.b,A,r)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(x,A=1){o.set(x),a=A,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(x){a=x,p(o,a)},render:g,addToRenderList:_,dispose:m}}function LM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(P,L,U,C,O){let H=!1,B=h(P,C,U,L);r!==B&&(r=B,c(r.object)),H=f(P,C,U,O),H&&g(P,C,U,O),O!==null&&t.update(O,i.ELEMENT_ARRAY_BUFFER),(H||o)&&(o=!1,b(P,L,U,C),O!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(O).buffer))}function l(){return i.createVertexArray()}function c(P){return i.bindVertexArray(P)}function u(P){return i.deleteVertexArray(P)}function h(P,L,U,C){let O=C.wireframe===!0,H=n[L.id];H===void 0&&(H={},n[L.id]=H);let B=P.isInstancedMesh===!0?P.id:0,st=H[B];st===void 0&&(st={},H[B]=st);let X=st[U.id];X===void 0&&(X={},st[U.id]=X);let J=X[O];return J===void 0&&(J=d(l()),X[O]=J),J}function d(P){let L=[],U=[],C=[];for(let O=0;O<e;O++)L[O]=0,U[O]=0,C[O]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:L,enabledAttributes:U,attributeDivisors:C,object:P,attributes:{},index:null}}function f(P,L,U,C){let O=r.attributes,H=L.attributes,B=0,st=U.getAttributes();for(let X in st)if(st[X].location>=0){let et=O[X],ft=H[X];if(ft===void 0&&(X==="instanceMatrix"&&P.instanceMatrix&&(ft=P.instanceMatrix),X==="instanceColor"&&P.instanceColor&&(ft=P.instanceColor)),et===void 0||et.attribute!==ft||ft&&et.data!==ft.data)return!0;B++}return r.attributesNum!==B||r.index!==C}function g(P,L,U,C){let O={},H=L.attributes,B=0,st=U.getAttributes();for(let X in st)if(st[X].location>=0){let et=H[X];et===void 0&&(X==="instanceMatrix"&&P.instanceMatrix&&(et=P.instanceMatrix),X==="instanceColor"&&P.instanceColor&&(et=P.instanceColor));let ft={};ft.attribute=et,et&&et.data&&(ft.data=et.data),O[X]=ft,B++}r.attributes=O,r.attributesNum=B,r.index=C}function _(){let P=r.newAttributes;for(let L=0,U=P.length;L<U;L++)P[L]=0}function p(P){m(P,0)}function m(P,L){let U=r.newAttributes,C=r.enabledAttributes,O=r.attributeDivisors;U[P]=1,C[P]===0&&(i.enableVertexAttribArray(P),C[P]=1),O[P]!==L&&(i.vertexAttribDivisor(P,L),O[P]=L)}function x(){let P=r.newAttributes,L=r.enabledAttributes;for(let U=0,C=L.length;U<C;U++)L[U]!==P[U]&&(i.disableVertexAttribArray(U),L[U]=0)}function A(P,L,U,C,O,H,B){B===!0?i.vertexAttribIPointer(P,L,U,O,H):i.vertexAttribPointer(P,L,U,C,O,H)}function b(P,L,U,C){_();let O=C.attributes,H=U.getAttributes(),B=L.defaultAttributeValues;for(let st in H){let X=H[st];if(X.location>=0){let J=O[st];if(J===void 0&&(st==="instanceMatrix"&&P.instanceMatrix&&(J=P.instanceMatrix),st==="instanceColor"&&P.instanceColor&&(J=P.instanceColor)),J!==void 0){let et=J.normalized,ft=J.itemSize,lt=t.get(J);if(lt===void 0)continue;let K=lt.buffer,dt=lt.type,rt=lt.bytesPerElement,_t=dt===i.INT||dt===i.UNSIGNED_INT||J.gpuType===Mc;if(J.isInterleavedBufferAttribute){let xt=J.data,gt=xt.isInterleavedBuffer===!0?xt.stride:xt.itemSize,It=J.offset;if(xt.isInstancedInterleavedBuffer||xt.isInstancedBufferAttribute){for(let Ut=0;Ut<X.locationSize;Ut++)m(X.location+Ut,xt.meshPerAttribute);P.isInstancedMesh!==!0&&C._maxInstanceCount===void 0&&(C._maxInstanceCount=xt.meshPerAttribute*xt.count)}else for(let Ut=0;Ut<X.locationSize;Ut++)p(X.location+Ut);i.bindBuffer(i.ARRAY_BUFFER,K);for(let Ut=0;Ut<X.locationSize;Ut++)A(X.location+Ut,ft/X.locationSize,dt,et,gt*rt,(It+ft/X.locationSize*Ut)*rt,_t)}else{if(J.isInstancedBufferAttribute){for(let xt=0;xt<X.locationSize;xt++)m(X.location+xt,J.meshPerAttribute);P.isInstancedMesh!==!0&&C._maxInstanceCount===void 0&&(C._maxInstanceCount=J.meshPerAttribute*J.count)}else for(let xt=0;xt<X.locationSize;xt++)p(X.location+xt);i.bindBuffer(i.ARRAY_BUFFER,K);for(let xt=0;xt<X.locationSize;xt++)A(X.location+xt,ft/X.locationSize,dt,et,ft*rt,ft/X.locationSize*xt*rt,_t)}}else if(B!==void 0){let et=B[st];if(et!==void 0)switch(et.length){case 2:i.vertexAttrib2fv(X.location,et);break;case 3:i.vertexAttrib3fv(X.location,et);break;case 4:i.vertexAttrib4fv(X.location,et);break;default:i.vertexAttrib1fv(X.location,et)}}}}x()}function R(){z();for(let P in n){let L=n[P];for(let U in L){let C=L[U];for(let O in C){let H=C[O];for(let B in H)u(H[B].object),delete H[B];delete C[O]}}delete n[P]}}function w(P){if(n[P.id]===void 0)return;let L=n[P.id];for(let U in L){let C=L[U];for(let O in C){let H=C[O];for(let B in H)u(H[B].object),delete H[B];delete C[O]}}delete n[P.id]}function y(P){for(let L in n){let U=n[L];for(let C in U){let O=U[C];if(O[P.id]===void 0)continue;let H=O[P.id];for(let B in H)u(H[B].object),delete H[B];delete O[P.id]}}}function M(P){for(let L in n){let U=n[L],C=P.isInstancedMesh===!0?P.id:0,O=U[C];if(O!==void 0){for(let H in O){let B=O[H];for(let st in B)u(B[st].object),delete B[st];delete O[H]}delete U[C],Object.keys(U).length===0&&delete n[L]}}}function z(){F(),o=!0,r!==s&&(r=s,c(r.object))}function F(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:z,resetDefaultState:F,dispose:R,releaseStatesOfGeometry:w,releaseStatesOfObject:M,releaseStatesOfProgram:y,initAttributes:_,enableAttribute:p,disableUnusedAttributes:x}}function DM(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,u){u!==0&&(i.drawArraysInstanced(n,l,c,u),e.update(c,n,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,u);let d=0;for(let f=0;f<u;f++)d+=c[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function NM(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let y=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(y.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(y){return!(y!==Bi&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(y){let M=y===Oi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(y!==ti&&y!==Fi&&!M&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(y){if(y==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";y="mediump"}return y==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",u=l(c);u!==c&&(Jt("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let h=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&h===!1;e.reversedDepthBuffer===!0&&h===!1&&Jt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&h===!0&&Jt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_TEXTURE_SIZE),p=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),x=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),A=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),R=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:h,maxTextures:f,maxVertexTextures:g,maxTextureSize:_,maxCubemapSize:p,maxAttributes:m,maxVertexUniforms:x,maxVaryings:A,maxFragmentUniforms:b,maxSamples:R,samples:w}}function UM(i){let t=this,e=null,n=0,s=!1,r=!1,o=new Yn,a=new oe,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(h,d){let f=h.length!==0||d||n!==0||s;return s=d,n=h.length,f},this.beginShadows=function(){r=!0,u(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(h,d){e=u(h,d,0)},this.setState=function(h,d,f){let g=h.clippingPlanes,_=h.clipIntersection,p=h.clipShadows,m=i.get(h);if(!s||g===null||g.length===0||r&&!p)r?u(null):c();else{let x=r?0:n,A=x*4,b=m.clippingState||null;l.value=b,b=u(g,d,A,f);for(let R=0;R!==A;++R)b[R]=e[R];m.clippingState=b,this.numIntersection=_?this.numPlanes:0,this.numPlanes+=x}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function u(h,d,f,g){let _=h!==null?h.length:0,p=null;if(_!==0){if(p=l.value,g!==!0||p===null){let m=f+_*4,x=d.matrixWorldInverse;a.getNormalMatrix(x),(p===null||p.length<m)&&(p=new Float32Array(m));for(let A=0,b=f;A!==_;++A,b+=4)o.copy(h[A]).applyMatrix4(x,a),o.normal.toArray(p,b),p[b+3]=o.constant}l.value=p,l.needsUpdate=!0}return t.numPlanes=_,t.numIntersection=0,p}}var La=class extends fi{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new ha(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new po(5,5,5),r=new Zi({name:"CubemapFromEquirect",uniforms:xr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Nn,blending:pr});r.uniforms.tEquirect.value=e;let o=new Pn(s,r),a=e.minFilter;return e.minFilter===ys&&(e.minFilter=Jn),new mo(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},Tg=256,FM=3,OM=20,Zg=256,Jg=16,BM=3,kM=new $,zM=new le,ah=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new mo(1,10,null),this._boxMesh=new Pn(new po(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=kM}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);e>0&&(u.texture.mipmapsAutoUpdate=!1);let h=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,_=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,_===null&&(t.background=l.getClearColor(zM));let p=new mo(n,s,u);return p.position.copy(a),p.update(l,t),l.autoClear=h,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=g,t.background=_,e>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Cg(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Rg(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(Tg,vd(t))}_fromTexture(t,e){t.mapping===gr||t.mapping===yo?this._setSize(t.image.length===0?Tg:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=Ag(t,!1,!1),n=Math.log2(t)-FM;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Ag(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===gr||t.mapping===yo?(this._cubemapMaterial===null&&(this._cubemapMaterial=Cg()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Rg()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=VM(),this._integrationMaterial=GM());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Jg);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-BM)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(Zg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=HM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function Ag(i,t,e){return new La(i,{minFilter:ys,generateMipmaps:t,type:Oi,colorSpace:ta,depthBuffer:e})}function Da(i,t,e){return new Zi({name:i,uniforms:t,vertexShader:pe.cube_vert,fragmentShader:e,side:Nn,blending:pr,depthTest:!1,depthWrite:!1})}function VM(){return Da("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Zg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function GM(){return Da("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Jg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function HM(){return Da("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${OM}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Rg(){return Da("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Cg(){return Da("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function WM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===yc||f===vc)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let _=new La(g.height);return _.fromEquirectangularTexture(i,d),t.set(d,_),d.addEventListener("dispose",c),a(_.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===yc||f===vc,_=f===gr||f===yo;if(g||_){let p=e.get(d),m=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==m)return n===null&&(n=new ah(i)),p=g?n.fromEquirectangular(d,p):n.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),p.texture;if(p!==void 0)return p.texture;{let x=d.image;return g&&x&&x.height>0||_&&x&&l(x)?(n===null&&(n=new ah(i)),p=g?n.fromEquirectangular(d):n.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),d.addEventListener("dispose",u),p.texture):null}}}return d}function a(d,f){return f===yc?d.mapping=gr:f===vc&&(d.mapping=yo),d}function l(d){let f=0,g=6;for(let _=0;_<g;_++)d[_]!==void 0&&f++;return f===g}function c(d){let f=d.target;f.removeEventListener("dispose",c);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function u(d){let f=d.target;f.removeEventListener("dispose",u);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function h(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:h}}function XM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Jo("WebGLRenderer: "+n+" extension not supported."),s}}}function $M(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let p in g.attributes)t.remove(g.attributes[p]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let _=r.get(g);_&&(t.remove(_),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,_){return s[_.id]!==void 0||(_.addEventListener("dispose",a),s[_.id]=new WeakRef(_),o.register(_,_.id,_),e.memory.geometries++),_}function u(g){let _=g.attributes;for(let p in _)t.update(_[p],i.ARRAY_BUFFER)}function h(g){let _=g.index,p=g.attributes.position,m=0;if(p===void 0)return;let x=_!==null?_.array.length:p.array.length/3-1,A=p.count>=65535?aa:oa,b=new A(Math.ceil(x/3)*6,1),R=b.array;if(_!==null){let y=_.array;m=_.version;for(let M=0,z=0;M<x;M+=3){let F=y[M+0],P=y[M+1],L=y[M+2];R[z++]=F,R[z++]=P,R[z++]=P,R[z++]=L,R[z++]=L,R[z++]=F}}else{m=p.version;for(let y=0,M=0;y<x;y+=3){let z=y+0,F=y+1,P=y+2;R[M++]=z,R[M++]=F,R[M++]=F,R[M++]=P,R[M++]=P,R[M++]=z}}b.version=m;let w=r.get(g);w&&t.remove(w),r.set(g,b)}function d(g){let _=r.get(g);if(_){let p=g.index;p!==null&&_.version<p.version&&h(g)}else h(g);return r.get(g)}function f(){for(let g in s){let _=s[g].deref();_!==void 0&&l(_)}}return{get:c,update:u,getWireframeAttribute:d,dispose:f}}function qM(i,t,e){let n;function s(h){n=h}let r,o;function a(h){r=h.type,o=h.bytesPerElement}function l(h,d){i.drawElements(n,d,r,h*o),e.update(d,n,1)}function c(h,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,h*o,f),e.update(d,n,f))}function u(h,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,h,0,f);let _=0;for(let p=0;p<f;p++)_+=d[p];e.update(_,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function YM(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:se("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function ZM(i,t,e){let n=new WeakMap,s=new Ye;function r(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,d=n.get(a);if(d===void 0||d.count!==h){let z=function(){y.dispose(),n.delete(a),a.removeEventListener("dispose",z)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,_=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],x=a.morphAttributes.color||[],A=0;f===!0&&(A=1),g===!0&&(A=2),_===!0&&(A=3);let b=a.attributes.position.count*A,R=1;b>t.maxTextureSize&&(R=Math.ceil(b/t.maxTextureSize),b=t.maxTextureSize);let w=new Float32Array(b*R*4*h),y=new ia(w,b,R,h);y.type=Fi,y.needsUpdate=!0;let M=A*4;for(let F=0;F<h;F++){let P=p[F],L=m[F],U=x[F],C=b*R*4*F;for(let O=0;O<P.count;O++){let H=O*M;f===!0&&(s.fromBufferAttribute(P,O),w[C+H+0]=s.x,w[C+H+1]=s.y,w[C+H+2]=s.z,w[C+H+3]=0),g===!0&&(s.fromBufferAttribute(L,O),w[C+H+4]=s.x,w[C+H+5]=s.y,w[C+H+6]=s.z,w[C+H+7]=0),_===!0&&(s.fromBufferAttribute(U,O),w[C+H+8]=s.x,w[C+H+9]=s.y,w[C+H+10]=s.z,w[C+H+11]=U.itemSize===4?s.w:1)}}d={count:h,texture:y,size:new re(b,R)},n.set(a,d),a.addEventListener("dispose",z)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let _=0;_<c.length;_++)f+=c[_];let g=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function JM(i,t,e,n,s){let r=new WeakMap;function o(c){let u=s.render.frame,h=c.geometry,d=t.get(c,h);if(r.get(d)!==u&&(t.update(d),r.set(d,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==u&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,u))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==u&&(f.update(),r.set(f,u))}return d}function a(){r=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),n.releaseStatesOfObject(u),e.remove(u.instanceMatrix),u.instanceColor!==null&&e.remove(u.instanceColor)}return{update:o,dispose:a}}var jM={[Qu]:"LINEAR_TONE_MAPPING",[td]:"REINHARD_TONE_MAPPING",[ed]:"CINEON_TONE_MAPPING",[nd]:"ACES_FILMIC_TONE_MAPPING",[sd]:"AGX_TONE_MAPPING",[rd]:"NEUTRAL_TONE_MAPPING",[id]:"CUSTOM_TONE_MAPPING"};function KM(i,t,e,n,s,r){let o=new fi(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new zn;u.setAttribute("position",new Dn([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Dn([0,2,0,0,2,0],2));let h=new ic({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Pn(u,h),f=new xa(-1,1,1,-1,0,1),g=null,_=null,p=!1,m,x=null,A=[],b=!1;this.setSize=function(R,w){o.setSize(R,w),a!==null&&a.setSize(R,w),l!==null&&l.setSize(R,w);for(let y=0;y<A.length;y++){let M=A[y];M.setSize&&M.setSize(R,w)}},this.setEffects=function(R){A=R,b=A.length>0&&A[0].isRenderPass===!0;let w=o.width,y=o.height;A.length>0&&a===null&&(a=new fi(w,y,{type:Oi,depthBuffer:!1,stencilBuffer:!1}),l=new fi(w,y,{type:Oi,depthBuffer:!1,stencilBuffer:!1}));let M=s===!0&&A.some(z=>z.needsDepthTexture===!0);M!==(o.depthTexture!==null)&&(M===!0&&c===null&&(c=new xs(w,y),r===!0&&(c.format=vs,c.type=_r)),o.dispose(),o.depthTexture=M?c:null,o.resolveDepthBuffer=M,o.storeMultisampledDepthBuffer=M);for(let z=0;z<A.length;z++){let F=A[z];F.setSize&&F.setSize(w,y),M&&F.needsDepthTexture===!0&&F.setDepthTexture&&F.setDepthTexture(c)}},this.begin=function(R,w){if(p||R.toneMapping===Ji&&A.length===0)return!1;if(x=w,w!==null){let y=w.width,M=w.height;(o.width!==y||o.height!==M)&&this.setSize(y,M)}return b===!1&&R.setRenderTarget(o),m=R.toneMapping,R.toneMapping=Ji,!0},this.hasRenderPass=function(){return b},this.end=function(R,w){R.toneMapping=m,p=!0;let y=o,M=a;for(let z=0;z<A.length;z++){let F=A[z];F.enabled!==!1&&(F.render(R,M,y,w),F.needsSwap!==!1&&(y=M,M=M===a?l:a))}if(g!==R.outputColorSpace||_!==R.toneMapping){g=R.outputColorSpace,_=R.toneMapping,h.defines={},be.getTransfer(g)===Ie&&(h.defines.SRGB_TRANSFER="");let z=jM[_];z&&(h.defines[z]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=y.texture,R.setRenderTarget(x),R.render(d,f),x=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),h.dispose()}}var jg=new Qn,Kg=new xs(1,1),Qg=new ua(1),t0=new ia,e0=new Kl,n0=new ha,Pg=[],Ig=[],Lg=new Float32Array(16),Dg=new Float32Array(9),Ng=new Float32Array(4);function So(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=Pg[s];if(r===void 0&&(r=new Float32Array(s),Pg[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function yn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function vn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function ch(i,t){let e=Ig[t];e===void 0&&(e=new Int32Array(t),Ig[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function QM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function tS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2fv(this.addr,t),vn(e,t)}}function eS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(yn(e,t))return;i.uniform3fv(this.addr,t),vn(e,t)}}function nS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4fv(this.addr,t),vn(e,t)}}function iS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Ng.set(n),i.uniformMatrix2fv(this.addr,!1,Ng),vn(e,n)}}function sS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Dg.set(n),i.uniformMatrix3fv(this.addr,!1,Dg),vn(e,n)}}function rS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;Lg.set(n),i.uniformMatrix4fv(this.addr,!1,Lg),vn(e,n)}}function oS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function aS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2iv(this.addr,t),vn(e,t)}}function lS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3iv(this.addr,t),vn(e,t)}}function cS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4iv(this.addr,t),vn(e,t)}}function hS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function uS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2uiv(this.addr,t),vn(e,t)}}function dS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3uiv(this.addr,t),vn(e,t)}}function fS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4uiv(this.addr,t),vn(e,t)}}function hh(i){return i.version===0&&(i.compareFunction=gd,i.needsUpdate=!0),i}function pS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=hh(Kg):r=jg,e.setTexture2D(t||r,s)}function mS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||e0,s)}function gS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=hh(Qg):r=n0,e.setTextureCube(t||r,s)}function _S(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||t0,s)}function xS(i){switch(i){case 5126:return QM;case 35664:return tS;case 35665:return eS;case 35666:return nS;case 35674:return iS;case 35675:return sS;case 35676:return rS;case 5124:case 35670:return oS;case 35667:case 35671:return aS;case 35668:case 35672:return lS;case 35669:case 35673:return cS;case 5125:return hS;case 36294:return uS;case 36295:return dS;case 36296:return fS;case 35678:case 36198:case 36298:case 36306:case 35682:return pS;case 35679:case 36299:case 36307:return mS;case 35680:case 36300:case 36308:case 36293:return gS;case 36289:case 36303:case 36311:case 36292:return _S}}function yS(i,t){i.uniform1fv(this.addr,t)}function vS(i,t){let e=So(t,this.size,2);i.uniform2fv(this.addr,e)}function bS(i,t){let e=So(t,this.size,3);i.uniform3fv(this.addr,e)}function MS(i,t){let e=So(t,this.size,4);i.uniform4fv(this.addr,e)}function SS(i,t){let e=So(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function wS(i,t){let e=So(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function ES(i,t){let e=So(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function TS(i,t){i.uniform1iv(this.addr,t)}function AS(i,t){i.uniform2iv(this.addr,t)}function RS(i,t){i.uniform3iv(this.addr,t)}function CS(i,t){i.uniform4iv(this.addr,t)}function PS(i,t){i.uniform1uiv(this.addr,t)}function IS(i,t){i.uniform2uiv(this.addr,t)}function LS(i,t){i.uniform3uiv(this.addr,t)}function DS(i,t){i.uniform4uiv(this.addr,t)}function NS(i,t,e){let n=this.cache,s=t.length,r=ch(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=hh(Kg):o=jg;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function US(i,t,e){let n=this.cache,s=t.length,r=ch(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||e0,r[o])}function FS(i,t,e){let n=this.cache,s=t.length,r=ch(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=hh(Qg):o=n0;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function OS(i,t,e){let n=this.cache,s=t.length,r=ch(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||t0,r[o])}function BS(i){switch(i){case 5126:return yS;case 35664:return vS;case 35665:return bS;case 35666:return MS;case 35674:return SS;case 35675:return wS;case 35676:return ES;case 5124:case 35670:return TS;case 35667:case 35671:return AS;case 35668:case 35672:return RS;case 35669:case 35673:return CS;case 5125:return PS;case 36294:return IS;case 36295:return LS;case 36296:return DS;case 35678:case 36198:case 36298:case 36306:case 35682:return NS;case 35679:case 36299:case 36307:return US;case 35680:case 36300:case 36308:case 36293:return FS;case 36289:case 36303:case 36311:case 36292:return OS}}var Cd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=xS(e.type)}},Pd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=BS(e.type)}},Id=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},Ad=/(\w+)(\])?(\[|\.)?/g;function Ug(i,t){i.seq.push(t),i.map[t.id]=t}function kS(i,t,e){let n=i.name,s=n.length;for(Ad.lastIndex=0;;){let r=Ad.exec(n),o=Ad.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){Ug(e,c===void 0?new Cd(a,i,t):new Pd(a,i,t));break}else{let h=e.map[a];h===void 0&&(h=new Id(a),Ug(e,h)),e=h}}}var Mo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);kS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function Fg(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var zS=37297,VS=0;function GS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var Og=new oe;function HS(i){be._getMatrix(Og,be.workingColorSpace,i);let t=`mat3( ${Og.elements.map(e=>e.toFixed(4))} )`;switch(be.getTransfer(i)){case ea:return[t,"LinearTransferOETF"];case Ie:return[t,"sRGBTransferOETF"];default:return Jt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function Bg(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+GS(i.getShaderSource(t),a)}else return r}function WS(i,t){let e=HS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var XS={[Qu]:"Linear",[td]:"Reinhard",[ed]:"Cineon",[nd]:"ACESFilmic",[sd]:"AgX",[rd]:"Neutral",[id]:"Custom"};function $S(i,t){let e=XS[t];return e===void 0?(Jt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var oh=new $;function qS(){be.getLuminanceCoefficients(oh);let i=oh.x.toFixed(4),t=oh.y.toFixed(4),e=oh.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function YS(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Ia).join(`
`)}function ZS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function JS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Ia(i){return i!==""}function kg(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function zg(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var jS=/^[ \t]*#include +<([\w\d./]+)>/gm;function Ld(i){return i.replace(jS,KS)}function KS(i,t){let e=pe[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return Ld(e)}var QS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Vg(i){return i.replace(QS,tw)}function tw(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Gg(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var ew={[Ma]:"SHADOWMAP_TYPE_PCF",[_o]:"SHADOWMAP_TYPE_VSM"};function nw(i){return ew[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var iw={[yo]:"ENVMAP_MODE_REFRACTION"};function sw(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":iw[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var rw={[xc]:"ENVMAP_BLENDING_MULTIPLY",[sg]:"ENVMAP_BLENDING_MIX",[rg]:"ENVMAP_BLENDING_ADD"};function ow(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":rw[i.combine]||"ENVMAP_BLENDING_NONE"}function aw(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=nw(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=sw(e),h=ow(e),d=YS(e),f=ZS(r),g=s.createProgram(),_,p,m=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(_=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ia).join(`
`),_.length>0&&(_+=`
`),p=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ia).join(`
`),p.length>0&&(p+=`
`)):(_=[Gg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+u:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Ia).join(`
`),p=[Gg(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+u:"",e.envMap?"#define "+h:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Ji?"#define TONE_MAPPING":"",e.toneMapping!==Ji?pe.tonemapping_pars_fragment:"",e.toneMapping!==Ji?$S("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",pe.colorspace_pars_fragment,WS("linearToOutputTexel",e.outputColorSpace),qS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Ia).join(`
`)),o=Ld(o),o=kg(o,e),o=zg(o,e),a=Ld(a),a=kg(a,e),a=zg(a,e),o=Vg(o),a=Vg(a),e.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,_=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+_,p=["#define varying in",e.glslVersion===_d?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===_d?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let x=m+_+o,A=m+p+a,b=Fg(s,s.VERTEX_SHADER,x),R=Fg(s,s.FRAGMENT_SHADER,A);s.attachShader(g,b),s.attachShader(g,R),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function w(F){if(i.debug.checkShaderErrors){let P=s.getProgramInfoLog(g)||"",L=s.getShaderInfoLog(b)||"",U=s.getShaderInfoLog(R)||"",C=P.trim(),O=L.trim(),H=U.trim(),B=!0,st=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(B=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,b,R);else{let X=Bg(s,b,"vertex"),J=Bg(s,R,"fragment");se("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+F.name+`
Material Type: `+F.type+`

Program Info Log: `+C+`
`+X+`
`+J)}else C!==""?Jt("WebGLProgram: Program Info Log:",C):(O===""||H==="")&&(st=!1);st&&(F.diagnostics={runnable:B,programLog:C,vertexShader:{log:O,prefix:_},fragmentShader:{log:H,prefix:p}})}s.deleteShader(b),s.deleteShader(R),y=new Mo(s,g),M=JS(s,g)}let y;this.getUniforms=function(){return y===void 0&&w(this),y};let M;this.getAttributes=function(){return M===void 0&&w(this),M};let z=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return z===!1&&(z=s.getProgramParameter(g,zS)),z},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=VS++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=b,this.fragmentShader=R,this}var lw=0,Dd=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new Nd(t),e.set(t,n)),n}},Nd=class{constructor(t){this.id=lw++,this.code=t,this.usedTimes=0}};function cw(i){return i===qs||i===Ra||i===Ca}function hw(i,t,e,n,s,r){let o=new sa,a=new Dd,l=new Set,c=[],u=new Map,h=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(y){return l.add(y),y===0?"uv":`uv${y}`}function g(y,M,z,F,P,L){let U=F.fog,C=P.geometry,O=y.isMeshStandardMaterial||y.isMeshLambertMaterial||y.isMeshPhongMaterial?F.environment:null,H=y.isMeshStandardMaterial||y.isMeshLambertMaterial&&!y.envMap||y.isMeshPhongMaterial&&!y.envMap,B=t.get(y.envMap||O,H),st=d[y.type],X=n.precision;y.precision!==null&&(X=n.getMaxPrecision(y.precision),X!==y.precision&&Jt("WebGLProgram.getParameters:",y.precision,"not supported, using",X,"instead."));let J=C.morphAttributes.position||C.morphAttributes.normal||C.morphAttributes.color,et=J!==void 0?J.length:0,ft=0;C.morphAttributes.position!==void 0&&(ft=1),C.morphAttributes.normal!==void 0&&(ft=2),C.morphAttributes.color!==void 0&&(ft=3);let lt,K,dt,rt;if(st){let Lt=Ki[st];lt=Lt.vertexShader,K=Lt.fragmentShader}else{lt=y.vertexShader,K=y.fragmentShader;let Lt=a.getVertexShaderStage(y),ue=a.getFragmentShaderStage(y);a.update(y,Lt,ue),dt=Lt.id,rt=ue.id}let _t=i.getRenderTarget(),xt=i.state.buffers.depth.getReversed(),gt=P.isInstancedMesh===!0,It=P.isBatchedMesh===!0,Ut=!!y.map,ee=!!y.matcap,he=!!B,ne=he&&B.isPMREMTexture===!0,Re=!!y.aoMap,Ce=!!y.lightMap,on=!!y.bumpMap&&y.wireframe===!1,Ue=!!y.normalMap,Mn=!!y.displacementMap,Me=!!y.emissiveMap,mn=!!y.metalnessMap,Je=!!y.roughnessMap,an=y.anisotropy>0,V=y.clearcoat>0,Dt=y.diffuseRoughness>0,jt=y.dispersion>0,ce=y.retroreflectivity>0,At=y.iridescence>0,Oe=y.sheen>0,Xt=y.transmission>0,Zt=an&&!!y.anisotropyMap,I=V&&!!y.clearcoatMap,S=V&&!!y.clearcoatNormalMap,Y=V&&!!y.clearcoatRoughnessMap,mt=Dt&&!!y.diffuseRoughnessMap,ct=At&&!!y.iridescenceMap,St=At&&!!y.iridescenceThicknessMap,wt=Oe&&!!y.sheenColorMap,nt=Oe&&!!y.sheenRoughnessMap,ot=!!y.specularMap,bt=!!y.specularColorMap,k=!!y.specularIntensityMap,at=Xt&&!!y.transmissionMap,it=Xt&&!!y.thicknessMap,Rt=!!y.gradientMap,Mt=!!y.alphaMap,Tt=y.alphaTest>0,$t=!!y.alphaHash,Qt=!!y.extensions,pt=Ji;y.toneMapped&&(_t===null||_t.isXRRenderTarget===!0)&&(pt=i.toneMapping);let Gt=ne?B.isCompressedCubeTexture?B.image[0].mipmaps:B.mipmaps:null,te={shaderID:st,shaderType:y.type,shaderName:y.name,vertexShader:lt,fragmentShader:K,defines:y.defines,customVertexShaderID:dt,customFragmentShaderID:rt,isRawShaderMaterial:y.isRawShaderMaterial===!0,glslVersion:y.glslVersion,precision:X,batching:It,batchingColor:It&&P._colorsTexture!==null,instancing:gt,instancingColor:gt&&P.instanceColor!==null,instancingMorph:gt&&P.morphTexture!==null,outputColorSpace:_t===null?i.outputColorSpace:_t.isXRRenderTarget===!0?_t.texture.colorSpace:be.workingColorSpace,alphaToCoverage:!!y.alphaToCoverage,map:Ut,matcap:ee,envMap:he,envMapMode:he&&B.mapping,envMapPMREM:ne,envMapMaxLod:ne?Gt.length-1:null,envMapSize:ne?Gt[0].width:null,aoMap:Re,lightMap:Ce,bumpMap:on,normalMap:Ue,displacementMap:Mn,emissiveMap:Me,normalMapObjectSpace:Ue&&y.normalMapType===lg,normalMapTangentSpace:Ue&&y.normalMapType===sh,packedNormalMap:Ue&&y.normalMapType===sh&&cw(y.normalMap.format),metalnessMap:mn,roughnessMap:Je,anisotropy:an,anisotropyMap:Zt,clearcoat:V,clearcoatMap:I,clearcoatNormalMap:S,clearcoatRoughnessMap:Y,diffuseRoughness:Dt,diffuseRoughnessMap:mt,dispersion:jt,retroreflection:ce,iridescence:At,iridescenceMap:ct,iridescenceThicknessMap:St,sheen:Oe,sheenColorMap:wt,sheenRoughnessMap:nt,specularMap:ot,specularColorMap:bt,specularIntensityMap:k,transmission:Xt,transmissionMap:at,thicknessMap:it,gradientMap:Rt,opaque:y.transparent===!1&&y.blending===xo&&y.alphaToCoverage===!1,alphaMap:Mt,alphaTest:Tt,alphaHash:$t,combine:y.combine,mapUv:Ut&&f(y.map.channel),aoMapUv:Re&&f(y.aoMap.channel),lightMapUv:Ce&&f(y.lightMap.channel),bumpMapUv:on&&f(y.bumpMap.channel),normalMapUv:Ue&&f(y.normalMap.channel),displacementMapUv:Mn&&f(y.displacementMap.channel),emissiveMapUv:Me&&f(y.emissiveMap.channel),metalnessMapUv:mn&&f(y.metalnessMap.channel),roughnessMapUv:Je&&f(y.roughnessMap.channel),anisotropyMapUv:Zt&&f(y.anisotropyMap.channel),clearcoatMapUv:I&&f(y.clearcoatMap.channel),clearcoatNormalMapUv:S&&f(y.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:Y&&f(y.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:mt&&f(y.diffuseRoughnessMap.channel),iridescenceMapUv:ct&&f(y.iridescenceMap.channel),iridescenceThicknessMapUv:St&&f(y.iridescenceThicknessMap.channel),sheenColorMapUv:wt&&f(y.sheenColorMap.channel),sheenRoughnessMapUv:nt&&f(y.sheenRoughnessMap.channel),specularMapUv:ot&&f(y.specularMap.channel),specularColorMapUv:bt&&f(y.specularColorMap.channel),specularIntensityMapUv:k&&f(y.specularIntensityMap.channel),transmissionMapUv:at&&f(y.transmissionMap.channel),thicknessMapUv:it&&f(y.thicknessMap.channel),alphaMapUv:Mt&&f(y.alphaMap.channel),vertexTangents:!!C.attributes.tangent&&(Ue||an),vertexNormals:!!C.attributes.normal,vertexColors:y.vertexColors,vertexAlphas:y.vertexColors===!0&&!!C.attributes.color&&C.attributes.color.itemSize===4,pointsUvs:P.isPoints===!0&&!!C.attributes.uv&&(Ut||Mt),fog:!!U,useFog:y.fog===!0,fogExp2:!!U&&U.isFogExp2,flatShading:y.wireframe===!1&&(y.flatShading===!0||C.attributes.normal===void 0&&Ue===!1&&(y.isMeshLambertMaterial||y.isMeshPhongMaterial||y.isMeshStandardMaterial||y.isMeshPhysicalMaterial)),sizeAttenuation:y.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:xt,skinning:P.isSkinnedMesh===!0,hasPositionAttribute:C.attributes.position!==void 0,morphTargets:C.morphAttributes.position!==void 0,morphNormals:C.morphAttributes.normal!==void 0,morphColors:C.morphAttributes.color!==void 0,morphTargetsCount:et,morphTextureStride:ft,numSunLights:M.sun.length,numDirLights:M.directional.length,numPointLights:M.point.length,numSpotLights:M.spot.length,numSpotLightMaps:M.spotLightMap.length,numRectAreaLights:M.rectArea.length,numHemiLights:M.hemi.length,numSunLightShadows:M.sunShadowMap.length,numDirLightShadows:M.directionalShadowMap.length,numPointLightShadows:M.pointShadowMap.length,numSpotLightShadows:M.spotShadowMap.length,numSpotLightShadowsWithMaps:M.numSpotLightShadowsWithMaps,numLightProbes:M.numLightProbes,numLightProbeGrids:L.filter(Lt=>Lt.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:y.dithering,shadowMapEnabled:i.shadowMap.enabled&&z.length>0,shadowMapType:i.shadowMap.type,toneMapping:pt,decodeVideoTexture:Ut&&y.map.isVideoTexture===!0&&be.getTransfer(y.map.colorSpace)===Ie,decodeVideoTextureEmissive:Me&&y.emissiveMap.isVideoTexture===!0&&be.getTransfer(y.emissiveMap.colorSpace)===Ie,premultipliedAlpha:y.premultipliedAlpha,doubleSided:y.side===jn,flipSided:y.side===Nn,useDepthPacking:y.depthPacking>=0,depthPacking:y.depthPacking||0,index0AttributeName:y.index0AttributeName,extensionClipCullDistance:Qt&&y.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Qt&&y.extensions.multiDraw===!0||It)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:y.customProgramCacheKey()};return te.vertexUv1s=l.has(1),te.vertexUv2s=l.has(2),te.vertexUv3s=l.has(3),l.clear(),te}function _(y){let M=[];if(y.shaderID?M.push(y.shaderID):(M.push(y.customVertexShaderID),M.push(y.customFragmentShaderID)),y.defines!==void 0)for(let z in y.defines)M.push(z),M.push(y.defines[z]);return y.isRawShaderMaterial===!1&&(p(M,y),m(M,y),M.push(i.outputColorSpace)),M.push(y.customProgramCacheKey),M.join()}function p(y,M){y.push(M.precision),y.push(M.outputColorSpace),y.push(M.envMapMode),y.push(M.envMapPMREM),y.push(M.envMapMaxLod),y.push(M.envMapSize),y.push(M.mapUv),y.push(M.alphaMapUv),y.push(M.lightMapUv),y.push(M.aoMapUv),y.push(M.bumpMapUv),y.push(M.normalMapUv),y.push(M.displacementMapUv),y.push(M.emissiveMapUv),y.push(M.metalnessMapUv),y.push(M.roughnessMapUv),y.push(M.anisotropyMapUv),y.push(M.clearcoatMapUv),y.push(M.clearcoatNormalMapUv),y.push(M.clearcoatRoughnessMapUv),y.push(M.diffuseRoughnessMapUv),y.push(M.iridescenceMapUv),y.push(M.iridescenceThicknessMapUv),y.push(M.sheenColorMapUv),y.push(M.sheenRoughnessMapUv),y.push(M.specularMapUv),y.push(M.specularColorMapUv),y.push(M.specularIntensityMapUv),y.push(M.transmissionMapUv),y.push(M.thicknessMapUv),y.push(M.combine),y.push(M.fogExp2),y.push(M.sizeAttenuation),y.push(M.morphTargetsCount),y.push(M.numSunLights),y.push(M.numDirLights),y.push(M.numPointLights),y.push(M.numSpotLights),y.push(M.numSpotLightMaps),y.push(M.numHemiLights),y.push(M.numRectAreaLights),y.push(M.numSunLightShadows),y.push(M.numDirLightShadows),y.push(M.numPointLightShadows),y.push(M.numSpotLightShadows),y.push(M.numSpotLightShadowsWithMaps),y.push(M.numLightProbes),y.push(M.numLightProbeGrids),y.push(M.shadowMapType),y.push(M.toneMapping),y.push(M.numClippingPlanes),y.push(M.numClipIntersection),y.push(M.depthPacking)}function m(y,M){o.disableAll(),M.instancing&&o.enable(0),M.instancingColor&&o.enable(1),M.instancingMorph&&o.enable(2),M.matcap&&o.enable(3),M.envMap&&o.enable(4),M.normalMapObjectSpace&&o.enable(5),M.normalMapTangentSpace&&o.enable(6),M.clearcoat&&o.enable(7),M.iridescence&&o.enable(8),M.alphaTest&&o.enable(9),M.vertexColors&&o.enable(10),M.vertexAlphas&&o.enable(11),M.vertexUv1s&&o.enable(12),M.vertexUv2s&&o.enable(13),M.vertexUv3s&&o.enable(14),M.vertexTangents&&o.enable(15),M.anisotropy&&o.enable(16),M.alphaHash&&o.enable(17),M.batching&&o.enable(18),M.dispersion&&o.enable(19),M.retroreflection&&o.enable(24),M.diffuseRoughness&&o.enable(25),M.batchingColor&&o.enable(20),M.gradientMap&&o.enable(21),M.packedNormalMap&&o.enable(22),M.vertexNormals&&o.enable(23),y.push(o.mask),o.disableAll(),M.fog&&o.enable(0),M.useFog&&o.enable(1),M.flatShading&&o.enable(2),M.logarithmicDepthBuffer&&o.enable(3),M.reversedDepthBuffer&&o.enable(4),M.skinning&&o.enable(5),M.morphTargets&&o.enable(6),M.morphNormals&&o.enable(7),M.morphColors&&o.enable(8),M.premultipliedAlpha&&o.enable(9),M.shadowMapEnabled&&o.enable(10),M.doubleSided&&o.enable(11),M.flipSided&&o.enable(12),M.useDepthPacking&&o.enable(13),M.dithering&&o.enable(14),M.transmission&&o.enable(15),M.sheen&&o.enable(16),M.opaque&&o.enable(17),M.pointsUvs&&o.enable(18),M.decodeVideoTexture&&o.enable(19),M.decodeVideoTextureEmissive&&o.enable(20),M.alphaToCoverage&&o.enable(21),M.numLightProbeGrids>0&&o.enable(22),M.hasPositionAttribute&&o.enable(23),y.push(o.mask)}function x(y){let M=d[y.type],z;if(M){let F=Ki[M];z=Sg.clone(F.uniforms)}else z=y.uniforms;return z}function A(y,M){let z=u.get(M);return z!==void 0?++z.usedTimes:(z=new aw(i,M,y,s),c.push(z),u.set(M,z)),z}function b(y){if(--y.usedTimes===0){let M=c.indexOf(y);c[M]=c[c.length-1],c.pop(),u.delete(y.cacheKey),y.destroy()}}function R(y){a.remove(y)}function w(){a.dispose()}return{getParameters:g,getProgramCacheKey:_,getUniforms:x,acquireProgram:A,releaseProgram:b,releaseShaderCache:R,programs:c,dispose:w}}function uw(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function dw(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function Hg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function Wg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,_,p,m){let x=i[t];return x===void 0?(x={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:_,renderOrder:d.renderOrder,z:p,group:m},i[t]=x):(x.id=d.id,x.object=d,x.geometry=f,x.material=g,x.materialVariant=o(d),x.groupOrder=_,x.renderOrder=d.renderOrder,x.z=p,x.group=m),t++,x}function l(d,f,g,_,p,m,x){x.reversedDepth===!0&&(p=-p);let A=a(d,f,g,_,p,m);g.transmission>0?n.push(A):g.transparent===!0?s.push(A):e.push(A)}function c(d,f,g,_,p,m){let x=a(d,f,g,_,p,m);g.transmission>0?n.unshift(x):g.transparent===!0?s.unshift(x):e.unshift(x)}function u(d,f){e.length>1&&e.sort(d||dw),n.length>1&&n.sort(f||Hg),s.length>1&&s.sort(f||Hg)}function h(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:h,sort:u}}function fw(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new Wg,i.set(n,[o])):s>=r.length?(o=new Wg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function pw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new $,color:new le};break;case"SpotLight":e={position:new $,direction:new $,color:new le,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new $,color:new le,distance:0,decay:0};break;case"HemisphereLight":e={direction:new $,skyColor:new le,groundColor:new le};break;case"RectAreaLight":e={color:new le,position:new $,halfWidth:new $,halfHeight:new $};break}return i[t.id]=e,e}}}function mw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var gw=0;function _w(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function xw(i){let t=new pw,e=mw(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new $);let s=new $,r=new $e,o=new $e;function a(c){let u=0,h=0,d=0;for(let L=0;L<9;L++)n.probe[L].set(0,0,0);let f=0,g=0,_=0,p=0,m=0,x=0,A=0,b=0,R=0,w=0,y=0,M=0,z=0,F=0;c.sort(_w);for(let L=0,U=c.length;L<U;L++){let C=c[L],O=C.color,H=C.intensity,B=C.distance,st=null;if(C.shadow&&C.shadow.map&&(C.shadow.map.texture.format===qs?st=C.shadow.map.texture:st=C.shadow.map.depthTexture||C.shadow.map.texture),C.isAmbientLight)u+=O.r*H,h+=O.g*H,d+=O.b*H;else if(C.isLightProbe){for(let X=0;X<9;X++)n.probe[X].addScaledVector(C.sh.coefficients[X],H);F++}else if(C.isSunLight){let X=t.get(C);if(X.color.copy(C.color).multiplyScalar(C.intensity),C.castShadow){let J=C.shadow,et=e.get(C);et.shadowIntensity=J.intensity,et.shadowBias=J.bias,et.shadowNormalBias=J.normalBias,et.shadowRadius=J.radius,et.shadowMapSize.copy(J.mapSize).multiply(J.getFrameExtents()),n.sunShadow[g]=et,n.sunShadowMap[g]=st;let ft=J.getViewportCount();for(let lt=0;lt<ft;lt++)n.sunShadowMatrix[_+lt]=J.getMatrix(lt),n.sunShadowCascade[_+lt]=J._cascadeData[lt];_+=ft,g++}n.sun[f]=X,f++}else if(C.isDirectionalLight){let X=t.get(C);if(X.color.copy(C.color).multiplyScalar(C.intensity),C.castShadow){let J=C.shadow,et=e.get(C);et.shadowIntensity=J.intensity,et.shadowBias=J.bias,et.shadowNormalBias=J.normalBias,et.shadowRadius=J.radius,et.shadowMapSize=J.mapSize,n.directionalShadow[p]=et,n.directionalShadowMap[p]=st,n.directionalShadowMatrix[p]=C.shadow.matrix,R++}n.directional[p]=X,p++}else if(C.isSpotLight){let X=t.get(C);X.position.setFromMatrixPosition(C.matrixWorld),X.color.copy(O).multiplyScalar(H),X.distance=B,X.coneCos=Math.cos(C.angle),X.penumbraCos=Math.cos(C.angle*(1-C.penumbra)),X.decay=C.decay,n.spot[x]=X;let J=C.shadow;if(C.map&&(n.spotLightMap[M]=C.map,M++,J.updateMatrices(C),C.castShadow&&z++),n.spotLightMatrix[x]=J.matrix,C.castShadow){let et=e.get(C);et.shadowIntensity=J.intensity,et.shadowBias=J.bias,et.shadowNormalBias=J.normalBias,et.shadowRadius=J.radius,et.shadowMapSize=J.mapSize,n.spotShadow[x]=et,n.spotShadowMap[x]=st,y++}x++}else if(C.isRectAreaLight){let X=t.get(C);X.color.copy(O).multiplyScalar(H),X.halfWidth.set(C.width*.5,0,0),X.halfHeight.set(0,C.height*.5,0),n.rectArea[A]=X,A++}else if(C.isPointLight){let X=t.get(C);if(X.color.copy(C.color).multiplyScalar(C.intensity),X.distance=C.distance,X.decay=C.decay,C.castShadow){let J=C.shadow,et=e.get(C);et.shadowIntensity=J.intensity,et.shadowBias=J.bias,et.shadowNormalBias=J.normalBias,et.shadowRadius=J.radius,et.shadowMapSize=J.mapSize,et.shadowCameraNear=J.camera.near,et.shadowCameraFar=J.camera.far,n.pointShadow[m]=et,n.pointShadowMap[m]=st,n.pointShadowMatrix[m]=C.shadow.matrix,w++}n.point[m]=X,m++}else if(C.isHemisphereLight){let X=t.get(C);X.skyColor.copy(C.color).multiplyScalar(H),X.groundColor.copy(C.groundColor).multiplyScalar(H),n.hemi[b]=X,b++}}A>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Ot.LTC_FLOAT_1,n.rectAreaLTC2=Ot.LTC_FLOAT_2):(n.rectAreaLTC1=Ot.LTC_HALF_1,n.rectAreaLTC2=Ot.LTC_HALF_2)),n.ambient[0]=u,n.ambient[1]=h,n.ambient[2]=d;let P=n.hash;(P.sunLength!==f||P.directionalLength!==p||P.pointLength!==m||P.spotLength!==x||P.rectAreaLength!==A||P.hemiLength!==b||P.numSunShadows!==g||P.numDirectionalShadows!==R||P.numPointShadows!==w||P.numSpotShadows!==y||P.numSpotMaps!==M||P.numLightProbes!==F)&&(n.sun.length=f,n.directional.length=p,n.spot.length=x,n.rectArea.length=A,n.point.length=m,n.hemi.length=b,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=_,n.sunShadowCascade.length=_,n.directionalShadow.length=R,n.directionalShadowMap.length=R,n.directionalShadowMatrix.length=R,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=y,n.spotShadowMap.length=y,n.spotLightMatrix.length=y+M-z,n.spotLightMap.length=M,n.numSpotLightShadowsWithMaps=z,n.numLightProbes=F,P.sunLength=f,P.directionalLength=p,P.pointLength=m,P.spotLength=x,P.rectAreaLength=A,P.hemiLength=b,P.numSunShadows=g,P.numDirectionalShadows=R,P.numPointShadows=w,P.numSpotShadows=y,P.numSpotMaps=M,P.numLightProbes=F,n.version=gw++)}function l(c,u){let h=0,d=0,f=0,g=0,_=0,p=0,m=u.matrixWorldInverse;for(let x=0,A=c.length;x<A;x++){let b=c[x];if(b.isSunLight){let R=n.sun[h];R.direction.setFromMatrixPosition(b.matrixWorld),R.direction.transformDirection(m),h++}else if(b.isDirectionalLight){let R=n.directional[d];R.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),d++}else if(b.isSpotLight){let R=n.spot[g];R.position.setFromMatrixPosition(b.matrixWorld),R.position.applyMatrix4(m),R.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),g++}else if(b.isRectAreaLight){let R=n.rectArea[_];R.position.setFromMatrixPosition(b.matrixWorld),R.position.applyMatrix4(m),o.identity(),r.copy(b.matrixWorld),r.premultiply(m),o.extractRotation(r),R.halfWidth.set(b.width*.5,0,0),R.halfHeight.set(0,b.height*.5,0),R.halfWidth.applyMatrix4(o),R.halfHeight.applyMatrix4(o),_++}else if(b.isPointLight){let R=n.point[f];R.position.setFromMatrixPosition(b.matrixWorld),R.position.applyMatrix4(m),f++}else if(b.isHemisphereLight){let R=n.hemi[p];R.direction.setFromMatrixPosition(b.matrixWorld),R.direction.transformDirection(m),p++}}}return{setup:a,setupView:l,state:n}}function Xg(i){let t=new xw(i),e=[],n=[],s=[];function r(h){u.camera=h,e.length=0,n.length=0,s.length=0}function o(h){h.isLightProbeGrid?s.push(h):e.push(h)}function a(h){n.push(h)}function l(){t.setup(e),s.sort((h,d)=>h.priority-d.priority||h.id-d.id)}function c(h){t.setupView(e,h)}let u={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function yw(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new Xg(i),t.set(s,[a])):r>=o.length?(a=new Xg(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var vw=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,bw=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,Mw=[new $(1,0,0),new $(-1,0,0),new $(0,1,0),new $(0,-1,0),new $(0,0,1),new $(0,0,-1)],Sw=[new $(0,-1,0),new $(0,-1,0),new $(0,0,1),new $(0,0,-1),new $(0,-1,0),new $(0,-1,0)],$g=new $e,Pa=new $,Rd=new $;function ww(i,t,e){let n=new zs,s=new re,r=new re,o=new Ye,a=new sc,l=new rc,c={},u=e.maxTextureSize,h={[Ni]:Nn,[Nn]:Ni,[jn]:jn},d=new Zi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new re},radius:{value:4}},vertexShader:vw,fragmentShader:bw}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new zn;g.setAttribute("position",new Bn(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let _=new Pn(g,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Ma;let m=this.type;this.render=function(w,y,M){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||w.length===0)return;this.type===km&&(Jt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Ma);let z=i.getRenderTarget(),F=i.getActiveCubeFace(),P=i.getActiveMipmapLevel(),L=i.state;L.setBlending(pr),L.buffers.depth.getReversed()===!0?L.buffers.color.setClear(0,0,0,0):L.buffers.color.setClear(1,1,1,1),L.buffers.depth.setTest(!0),L.setScissorTest(!1);let U=m!==this.type;U&&y.traverse(function(C){C.material&&(Array.isArray(C.material)?C.material.forEach(O=>O.needsUpdate=!0):C.material.needsUpdate=!0)});for(let C=0,O=w.length;C<O;C++){let H=w[C],B=H.shadow;if(B===void 0){Jt("WebGLShadowMap:",H,"has no shadow.");continue}if(B.autoUpdate===!1&&B.needsUpdate===!1)continue;s.copy(B.mapSize);let st=B.getFrameExtents();s.multiply(st),r.copy(B.mapSize),(s.x>u||s.y>u)&&(s.x>u&&(r.x=Math.floor(u/st.x),s.x=r.x*st.x,B.mapSize.x=r.x),s.y>u&&(r.y=Math.floor(u/st.y),s.y=r.y*st.y,B.mapSize.y=r.y));let X=i.state.buffers.depth.getReversed();if(B.camera._reversedDepth=X,B.map===null||U===!0){if(B.map!==null&&(B.map.depthTexture!==null&&(B.map.depthTexture.dispose(),B.map.depthTexture=null),B.map.dispose()),this.type===_o){if(H.isPointLight){Jt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}B.map=new fi(s.x,s.y,{format:qs,type:Oi,minFilter:Jn,magFilter:Jn,generateMipmaps:!1}),B.map.texture.name=H.name+".shadowMap",B.map.depthTexture=new xs(s.x,s.y,Fi),B.map.depthTexture.name=H.name+".shadowMapDepth",B.map.depthTexture.format=ps,B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=Cn,B.map.depthTexture.magFilter=Cn}else H.isPointLight?(B.map=new La(s.x),B.map.depthTexture=new ua(s.x,Ui)):(B.map=new fi(s.x,s.y),B.map.depthTexture=new xs(s.x,s.y,Ui)),B.map.depthTexture.name=H.name+".shadowMap",B.map.depthTexture.format=ps,this.type===Ma?(B.map.depthTexture.compareFunction=X?md:pd,B.map.depthTexture.minFilter=Jn,B.map.depthTexture.magFilter=Jn):(B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=Cn,B.map.depthTexture.magFilter=Cn);B.camera.updateProjectionMatrix()}B.map.isWebGLCubeRenderTarget!==!0&&(B.map.width!==s.x||B.map.height!==s.y)&&B.map.setSize(s.x,s.y);let J=B.map.isWebGLCubeRenderTarget?6:B.getViewportCount();H.isPointLight!==!0&&B.updateMatrices(H,M);let et=(B.camera.layers.mask&4294967294)!==0?B.camera.layers:M.layers;for(let ft=0;ft<J;ft++){let lt=B.getCamera(ft);if(H.isPointLight){let K=B.camera,dt=B.matrix,rt=H.distance||K.far;rt!==K.far&&(K.far=rt,K.updateProjectionMatrix()),Pa.setFromMatrixPosition(H.matrixWorld),K.position.copy(Pa),Rd.copy(K.position),Rd.add(Mw[ft]),K.up.copy(Sw[ft]),K.lookAt(Rd),K.updateMatrixWorld(),dt.makeTranslation(-Pa.x,-Pa.y,-Pa.z),$g.multiplyMatrices(K.projectionMatrix,K.matrixWorldInverse),B._frustum.setFromProjectionMatrix($g,K.coordinateSystem,K.reversedDepth)}if(B.map.isWebGLCubeRenderTarget)i.setRenderTarget(B.map,ft),i.clear();else{ft===0&&(i.setRenderTarget(B.map),i.clear());let K=B.getViewport(ft);o.set(r.x*K.x,r.y*K.y,r.x*K.z,r.y*K.w),L.viewport(o)}n=B.getFrustum(ft),b(y,M,lt,H,et,this.type)}B.isPointLightShadow!==!0&&this.type===_o&&x(B,M),B.needsUpdate=!1}m=this.type,p.needsUpdate=!1,i.setRenderTarget(z,F,P)};function x(w,y){let M=t.update(_);d.defines.VSM_SAMPLES!==w.blurSamples&&(d.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new fi(s.x,s.y,{format:qs,type:Oi}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),d.uniforms.shadow_pass.value=w.map.depthTexture,d.uniforms.resolution.value.set(w.map.width,w.map.height),d.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(y,null,M,d,_,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(y,null,M,f,_,null)}function A(w,y,M,z){let F=null,P=M.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(P!==void 0)F=P;else if(F=M.isPointLight===!0?l:a,i.localClippingEnabled&&y.clipShadows===!0&&Array.isArray(y.clippingPlanes)&&y.clippingPlanes.length!==0||y.displacementMap&&y.displacementScale!==0||y.alphaMap&&y.alphaTest>0||y.map&&y.alphaTest>0||y.alphaToCoverage===!0){let L=F.uuid,U=y.uuid,C=c[L];C===void 0&&(C={},c[L]=C);let O=C[U];O===void 0&&(O=F.clone(),C[U]=O,y.addEventListener("dispose",R)),F=O}if(F.visible=y.visible,F.wireframe=y.wireframe,z===_o?F.side=y.shadowSide!==null?y.shadowSide:y.side:F.side=y.shadowSide!==null?y.shadowSide:h[y.side],F.alphaMap=y.alphaMap,F.alphaTest=y.alphaToCoverage===!0?.5:y.alphaTest,F.map=y.map,F.clipShadows=y.clipShadows,F.clippingPlanes=y.clippingPlanes,F.clipIntersection=y.clipIntersection,F.displacementMap=y.displacementMap,F.displacementScale=y.displacementScale,F.displacementBias=y.displacementBias,F.wireframeLinewidth=y.wireframeLinewidth,F.linewidth=y.linewidth,M.isPointLight===!0&&F.isMeshDistanceMaterial===!0){let L=i.properties.get(F);L.light=M}return F}function b(w,y,M,z,F,P){if(w.visible===!1)return;if(w.layers.test(F)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&P===_o)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(M.matrixWorldInverse,w.matrixWorld);let C=t.update(w),O=w.material;if(Array.isArray(O)){let H=C.groups;for(let B=0,st=H.length;B<st;B++){let X=H[B],J=O[X.materialIndex];if(J&&J.visible){let et=A(w,J,z,P);w.onBeforeShadow(i,w,y,M,C,et,X),i.renderBufferDirect(M,null,C,et,w,X),w.onAfterShadow(i,w,y,M,C,et,X)}}}else if(O.visible){let H=A(w,O,z,P);w.onBeforeShadow(i,w,y,M,C,H,null),i.renderBufferDirect(M,null,C,H,w,null),w.onAfterShadow(i,w,y,M,C,H,null)}}let U=w.children;for(let C=0,O=U.length;C<O;C++)b(U[C],y,M,z,F,P)}function R(w){w.target.removeEventListener("dispose",R);for(let M in c){let z=c[M],F=w.target.uuid;F in z&&(z[F].dispose(),delete z[F])}}}function Ew(i,t){function e(){let k=!1,at=new Ye,it=null,Rt=new Ye(0,0,0,0);return{setMask:function(Mt){it!==Mt&&!k&&(i.colorMask(Mt,Mt,Mt,Mt),it=Mt)},setLocked:function(Mt){k=Mt},setClear:function(Mt,Tt,$t,Qt,pt){pt===!0&&(Mt*=Qt,Tt*=Qt,$t*=Qt),at.set(Mt,Tt,$t,Qt),Rt.equals(at)===!1&&(i.clearColor(Mt,Tt,$t,Qt),Rt.copy(at))},reset:function(){k=!1,it=null,Rt.set(-1,0,0,0)}}}function n(){let k=!1,at=!1,it=null,Rt=null,Mt=null;return{setReversed:function(Tt){if(at!==Tt){let $t=t.get("EXT_clip_control");Tt?$t.clipControlEXT($t.LOWER_LEFT_EXT,$t.ZERO_TO_ONE_EXT):$t.clipControlEXT($t.LOWER_LEFT_EXT,$t.NEGATIVE_ONE_TO_ONE_EXT),at=Tt;let Qt=Mt;Mt=null,this.setClear(Qt)}},getReversed:function(){return at},setTest:function(Tt){Tt?xt(i.DEPTH_TEST):gt(i.DEPTH_TEST)},setMask:function(Tt){it!==Tt&&!k&&(i.depthMask(Tt),it=Tt)},setFunc:function(Tt){if(at&&(Tt=yg[Tt]),Rt!==Tt){switch(Tt){case zl:i.depthFunc(i.NEVER);break;case Vl:i.depthFunc(i.ALWAYS);break;case Gl:i.depthFunc(i.LESS);break;case oo:i.depthFunc(i.LEQUAL);break;case Hl:i.depthFunc(i.EQUAL);break;case Wl:i.depthFunc(i.GEQUAL);break;case Xl:i.depthFunc(i.GREATER);break;case $l:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Rt=Tt}},setLocked:function(Tt){k=Tt},setClear:function(Tt){Mt!==Tt&&(Mt=Tt,at&&(Tt=1-Tt),i.clearDepth(Tt))},reset:function(){k=!1,it=null,Rt=null,Mt=null,at=!1}}}function s(){let k=!1,at=null,it=null,Rt=null,Mt=null,Tt=null,$t=null,Qt=null,pt=null;return{setTest:function(Gt){k||(Gt?xt(i.STENCIL_TEST):gt(i.STENCIL_TEST))},setMask:function(Gt){at!==Gt&&!k&&(i.stencilMask(Gt),at=Gt)},setFunc:function(Gt,te,Lt){(it!==Gt||Rt!==te||Mt!==Lt)&&(i.stencilFunc(Gt,te,Lt),it=Gt,Rt=te,Mt=Lt)},setOp:function(Gt,te,Lt){(Tt!==Gt||$t!==te||Qt!==Lt)&&(i.stencilOp(Gt,te,Lt),Tt=Gt,$t=te,Qt=Lt)},setLocked:function(Gt){k=Gt},setClear:function(Gt){pt!==Gt&&(i.clearStencil(Gt),pt=Gt)},reset:function(){k=!1,at=null,it=null,Rt=null,Mt=null,Tt=null,$t=null,Qt=null,pt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,u={},h={},d={},f=new WeakMap,g=[],_=null,p=!1,m=null,x=null,A=null,b=null,R=null,w=null,y=null,M=new le(0,0,0),z=0,F=!1,P=null,L=null,U=null,C=null,O=null,H=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),B=!1,st=0,X=i.getParameter(i.VERSION);X.indexOf("WebGL")!==-1?(st=parseFloat(/^WebGL (\d)/.exec(X)[1]),B=st>=1):X.indexOf("OpenGL ES")!==-1&&(st=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),B=st>=2);let J=null,et={},ft=i.getParameter(i.SCISSOR_BOX),lt=i.getParameter(i.VIEWPORT),K=new Ye().fromArray(ft),dt=new Ye().fromArray(lt);function rt(k,at,it,Rt){let Mt=new Uint8Array(4),Tt=i.createTexture();i.bindTexture(k,Tt),i.texParameteri(k,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(k,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let $t=0;$t<it;$t++)k===i.TEXTURE_3D||k===i.TEXTURE_2D_ARRAY?i.texImage3D(at,0,i.RGBA,1,1,Rt,0,i.RGBA,i.UNSIGNED_BYTE,Mt):i.texImage2D(at+$t,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,Mt);return Tt}let _t={};_t[i.TEXTURE_2D]=rt(i.TEXTURE_2D,i.TEXTURE_2D,1),_t[i.TEXTURE_CUBE_MAP]=rt(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),_t[i.TEXTURE_2D_ARRAY]=rt(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),_t[i.TEXTURE_3D]=rt(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),xt(i.DEPTH_TEST),o.setFunc(oo),on(!1),Ue(qu),xt(i.CULL_FACE),Re(pr);function xt(k){u[k]!==!0&&(i.enable(k),u[k]=!0)}function gt(k){u[k]!==!1&&(i.disable(k),u[k]=!1)}function It(k,at){return d[k]!==at?(i.bindFramebuffer(k,at),d[k]=at,k===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=at),k===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=at),!0):!1}function Ut(k,at){let it=g,Rt=!1;if(k){it=f.get(at),it===void 0&&(it=[],f.set(at,it));let Mt=k.textures;if(it.length!==Mt.length||it[0]!==i.COLOR_ATTACHMENT0){for(let Tt=0,$t=Mt.length;Tt<$t;Tt++)it[Tt]=i.COLOR_ATTACHMENT0+Tt;it.length=Mt.length,Rt=!0}}else it[0]!==i.BACK&&(it[0]=i.BACK,Rt=!0);Rt&&i.drawBuffers(it)}function ee(k){return _!==k?(i.useProgram(k),_=k,!0):!1}let he={[mr]:i.FUNC_ADD,[Vm]:i.FUNC_SUBTRACT,[Gm]:i.FUNC_REVERSE_SUBTRACT};he[Hm]=i.MIN,he[Wm]=i.MAX;let ne={[Xm]:i.ZERO,[$m]:i.ONE,[qm]:i.SRC_COLOR,[ju]:i.SRC_ALPHA,[Qm]:i.SRC_ALPHA_SATURATE,[jm]:i.DST_COLOR,[Zm]:i.DST_ALPHA,[Ym]:i.ONE_MINUS_SRC_COLOR,[Ku]:i.ONE_MINUS_SRC_ALPHA,[Km]:i.ONE_MINUS_DST_COLOR,[Jm]:i.ONE_MINUS_DST_ALPHA,[tg]:i.CONSTANT_COLOR,[eg]:i.ONE_MINUS_CONSTANT_COLOR,[ng]:i.CONSTANT_ALPHA,[ig]:i.ONE_MINUS_CONSTANT_ALPHA};function Re(k,at,it,Rt,Mt,Tt,$t,Qt,pt,Gt){if(k===pr){p===!0&&(gt(i.BLEND),p=!1);return}if(p===!1&&(xt(i.BLEND),p=!0),k!==zm){if(k!==m||Gt!==F){if((x!==mr||R!==mr)&&(i.blendEquation(i.FUNC_ADD),x=mr,R=mr),Gt)switch(k){case xo:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Yu:i.blendFunc(i.ONE,i.ONE);break;case Zu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Ju:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:se("WebGLState: Invalid blending: ",k);break}else switch(k){case xo:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Yu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Zu:se("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Ju:se("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:se("WebGLState: Invalid blending: ",k);break}A=null,b=null,w=null,y=null,M.set(0,0,0),z=0,m=k,F=Gt}return}Mt=Mt||at,Tt=Tt||it,$t=$t||Rt,(at!==x||Mt!==R)&&(i.blendEquationSeparate(he[at],he[Mt]),x=at,R=Mt),(it!==A||Rt!==b||Tt!==w||$t!==y)&&(i.blendFuncSeparate(ne[it],ne[Rt],ne[Tt],ne[$t]),A=it,b=Rt,w=Tt,y=$t),(Qt.equals(M)===!1||pt!==z)&&(i.blendColor(Qt.r,Qt.g,Qt.b,pt),M.copy(Qt),z=pt),m=k,F=!1}function Ce(k,at){k.side===jn?gt(i.CULL_FACE):xt(i.CULL_FACE);let it=k.side===Nn;at&&(it=!it),on(it),k.blending===xo&&k.transparent===!1?Re(pr):Re(k.blending,k.blendEquation,k.blendSrc,k.blendDst,k.blendEquationAlpha,k.blendSrcAlpha,k.blendDstAlpha,k.blendColor,k.blendAlpha,k.premultipliedAlpha),o.setFunc(k.depthFunc),o.setTest(k.depthTest),o.setMask(k.depthWrite),r.setMask(k.colorWrite);let Rt=k.stencilWrite;a.setTest(Rt),Rt&&(a.setMask(k.stencilWriteMask),a.setFunc(k.stencilFunc,k.stencilRef,k.stencilFuncMask),a.setOp(k.stencilFail,k.stencilZFail,k.stencilZPass)),Me(k.polygonOffset,k.polygonOffsetFactor,k.polygonOffsetUnits),k.alphaToCoverage===!0?xt(i.SAMPLE_ALPHA_TO_COVERAGE):gt(i.SAMPLE_ALPHA_TO_COVERAGE)}function on(k){P!==k&&(k?i.frontFace(i.CW):i.frontFace(i.CCW),P=k)}function Ue(k){k!==Om?(xt(i.CULL_FACE),k!==L&&(k===qu?i.cullFace(i.BACK):k===Bm?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):gt(i.CULL_FACE),L=k}function Mn(k){k!==U&&(B&&i.lineWidth(k),U=k)}function Me(k,at,it){k?(xt(i.POLYGON_OFFSET_FILL),(C!==at||O!==it)&&(C=at,O=it,o.getReversed()&&(at=-at,it=-it),i.polygonOffset(at,it))):gt(i.POLYGON_OFFSET_FILL)}function mn(k){k?xt(i.SCISSOR_TEST):gt(i.SCISSOR_TEST)}function Je(k){k===void 0&&(k=i.TEXTURE0+H-1),J!==k&&(i.activeTexture(k),J=k)}function an(k,at,it){it===void 0&&(J===null?it=i.TEXTURE0+H-1:it=J);let Rt=et[it];Rt===void 0&&(Rt={type:void 0,texture:void 0},et[it]=Rt),(Rt.type!==k||Rt.texture!==at)&&(J!==it&&(i.activeTexture(it),J=it),i.bindTexture(k,at||_t[k]),Rt.type=k,Rt.texture=at)}function V(){let k=et[J];k!==void 0&&k.type!==void 0&&(i.bindTexture(k.type,null),k.type=void 0,k.texture=void 0)}function Dt(){try{i.compressedTexImage2D(...arguments)}catch(k){se("WebGLState:",k)}}function jt(){try{i.compressedTexImage3D(...arguments)}catch(k){se("WebGLState:",k)}}function ce(){try{i.texSubImage2D(...arguments)}catch(k){se("WebGLState:",k)}}function At(){try{i.texSubImage3D(...arguments)}catch(k){se("WebGLState:",k)}}function Oe(){try{i.compressedTexSubImage2D(...arguments)}catch(k){se("WebGLState:",k)}}function Xt(){try{i.compressedTexSubImage3D(...arguments)}catch(k){se("WebGLState:",k)}}function Zt(){try{i.texStorage2D(...arguments)}catch(k){se("WebGLState:",k)}}function I(){try{i.texStorage3D(...arguments)}catch(k){se("WebGLState:",k)}}function S(){try{i.texImage2D(...arguments)}catch(k){se("WebGLState:",k)}}function Y(){try{i.texImage3D(...arguments)}catch(k){se("WebGLState:",k)}}function mt(k){return h[k]!==void 0?h[k]:i.getParameter(k)}function ct(k,at){h[k]!==at&&(i.pixelStorei(k,at),h[k]=at)}function St(k){K.equals(k)===!1&&(i.scissor(k.x,k.y,k.z,k.w),K.copy(k))}function wt(k){dt.equals(k)===!1&&(i.viewport(k.x,k.y,k.z,k.w),dt.copy(k))}function nt(k,at){let it=c.get(at);it===void 0&&(it=new WeakMap,c.set(at,it));let Rt=it.get(k);Rt===void 0&&(Rt=i.getUniformBlockIndex(at,k.name),i.uniformBlockBinding(at,Rt,Rt),it.set(k,Rt))}function ot(k,at,it){let Mt=c.get(at).get(k);l[Mt]!==it&&(i.bindBufferBase(i.UNIFORM_BUFFER,Mt,it),l[Mt]=it)}function bt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),u={},h={},J=null,et={},d={},l={},f=new WeakMap,g=[],_=null,p=!1,m=null,x=null,A=null,b=null,R=null,w=null,y=null,M=new le(0,0,0),z=0,F=!1,P=null,L=null,U=null,C=null,O=null,K.set(0,0,i.canvas.width,i.canvas.height),dt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:xt,disable:gt,bindFramebuffer:It,drawBuffers:Ut,useProgram:ee,setBlending:Re,setMaterial:Ce,setFlipSided:on,setCullFace:Ue,setLineWidth:Mn,setPolygonOffset:Me,setScissorTest:mn,activeTexture:Je,bindTexture:an,unbindTexture:V,compressedTexImage2D:Dt,compressedTexImage3D:jt,texImage2D:S,texImage3D:Y,pixelStorei:ct,getParameter:mt,updateUBOMapping:nt,uniformBlockBinding:ot,texStorage2D:Zt,texStorage3D:I,texSubImage2D:ce,texSubImage3D:At,compressedTexSubImage2D:Oe,compressedTexSubImage3D:Xt,scissor:St,viewport:wt,reset:bt}}function Tw(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new re,u=new WeakMap,h=new Set,d,f=new WeakMap,g=new Set,_=new FinalizationRegistry(I=>g.delete(I)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(I,S){return p?new OffscreenCanvas(I,S):na("canvas")}function x(I,S,Y){let mt=1,ct=Zt(I);if((ct.width>Y||ct.height>Y)&&(mt=Y/Math.max(ct.width,ct.height)),mt<1)if(typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&I instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&I instanceof ImageBitmap||typeof VideoFrame<"u"&&I instanceof VideoFrame){let St=Math.floor(mt*ct.width),wt=Math.floor(mt*ct.height);d===void 0&&(d=m(St,wt));let nt=S?m(St,wt):d;return nt.width=St,nt.height=wt,nt.getContext("2d").drawImage(I,0,0,St,wt),Jt("WebGLRenderer: Texture has been resized from ("+ct.width+"x"+ct.height+") to ("+St+"x"+wt+")."),nt}else return"data"in I&&Jt("WebGLRenderer: Image in DataTexture is too big ("+ct.width+"x"+ct.height+")."),I;return I}function A(I){return I.generateMipmaps}function b(I){i.generateMipmap(I)}function R(I){return I.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:I.isWebGL3DRenderTarget?i.TEXTURE_3D:I.isWebGLArrayRenderTarget||I.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(I,S,Y,mt,ct,St=!1){if(I!==null){if(i[I]!==void 0)return i[I];Jt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+I+"'")}let wt;mt&&(wt=t.get("EXT_texture_norm16"),wt||Jt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let nt=S;if(S===i.RED&&(Y===i.FLOAT&&(nt=i.R32F),Y===i.HALF_FLOAT&&(nt=i.R16F),Y===i.UNSIGNED_BYTE&&(nt=i.R8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.R16_EXT),Y===i.SHORT&&wt&&(nt=wt.R16_SNORM_EXT)),S===i.RED_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.R8UI),Y===i.UNSIGNED_SHORT&&(nt=i.R16UI),Y===i.UNSIGNED_INT&&(nt=i.R32UI),Y===i.BYTE&&(nt=i.R8I),Y===i.SHORT&&(nt=i.R16I),Y===i.INT&&(nt=i.R32I)),S===i.RG&&(Y===i.FLOAT&&(nt=i.RG32F),Y===i.HALF_FLOAT&&(nt=i.RG16F),Y===i.UNSIGNED_BYTE&&(nt=i.RG8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RG16_EXT),Y===i.SHORT&&wt&&(nt=wt.RG16_SNORM_EXT)),S===i.RG_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RG8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RG16UI),Y===i.UNSIGNED_INT&&(nt=i.RG32UI),Y===i.BYTE&&(nt=i.RG8I),Y===i.SHORT&&(nt=i.RG16I),Y===i.INT&&(nt=i.RG32I)),S===i.RGB_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGB8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGB16UI),Y===i.UNSIGNED_INT&&(nt=i.RGB32UI),Y===i.BYTE&&(nt=i.RGB8I),Y===i.SHORT&&(nt=i.RGB16I),Y===i.INT&&(nt=i.RGB32I)),S===i.RGBA_INTEGER&&(Y===i.UNSIGNED_BYTE&&(nt=i.RGBA8UI),Y===i.UNSIGNED_SHORT&&(nt=i.RGBA16UI),Y===i.UNSIGNED_INT&&(nt=i.RGBA32UI),Y===i.BYTE&&(nt=i.RGBA8I),Y===i.SHORT&&(nt=i.RGBA16I),Y===i.INT&&(nt=i.RGBA32I)),S===i.RGB&&(Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RGB16_EXT),Y===i.SHORT&&wt&&(nt=wt.RGB16_SNORM_EXT),Y===i.UNSIGNED_INT_5_9_9_9_REV&&(nt=i.RGB9_E5),Y===i.UNSIGNED_INT_10F_11F_11F_REV&&(nt=i.R11F_G11F_B10F)),S===i.RGBA){let ot=St?ea:be.getTransfer(ct);Y===i.FLOAT&&(nt=i.RGBA32F),Y===i.HALF_FLOAT&&(nt=i.RGBA16F),Y===i.UNSIGNED_BYTE&&(nt=ot===Ie?i.SRGB8_ALPHA8:i.RGBA8),Y===i.UNSIGNED_SHORT&&wt&&(nt=wt.RGBA16_EXT),Y===i.SHORT&&wt&&(nt=wt.RGBA16_SNORM_EXT),Y===i.UNSIGNED_SHORT_4_4_4_4&&(nt=i.RGBA4),Y===i.UNSIGNED_SHORT_5_5_5_1&&(nt=i.RGB5_A1)}return(nt===i.R16F||nt===i.R32F||nt===i.RG16F||nt===i.RG32F||nt===i.RGBA16F||nt===i.RGBA32F)&&t.get("EXT_color_buffer_float"),nt}function y(I,S){let Y;return I?S===null||S===Ui||S===_r?Y=i.DEPTH24_STENCIL8:S===Fi?Y=i.DEPTH32F_STENCIL8:S===vo&&(Y=i.DEPTH24_STENCIL8,Jt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):S===null||S===Ui||S===_r?Y=i.DEPTH_COMPONENT24:S===Fi?Y=i.DEPTH_COMPONENT32F:S===vo&&(Y=i.DEPTH_COMPONENT16),Y}function M(I,S){return A(I)===!0||I.isFramebufferTexture&&I.minFilter!==Cn&&I.minFilter!==Jn?Math.log2(Math.max(S.width,S.height))+1:I.mipmaps.length>0?I.mipmaps.length:I.isCompressedTexture&&Array.isArray(I.image)?S.mipmaps.length:1}function z(I){let S=new WeakRef(I);n.get(I).__ref=S,g.add(S),_.register(I,S,S)}function F(I){let S=n.get(I).__ref;S!==void 0&&(g.delete(S),_.unregister(S))}function P(I){U(I.target)}function L(I){C(I.target)}function U(I){I.removeEventListener("dispose",P),F(I),H(I),I.isVideoTexture&&u.delete(I),I.isHTMLTexture&&h.delete(I)}function C(I){I.removeEventListener("dispose",L),F(I),st(I)}function O(){for(let I of g){let S=I.deref();S!==void 0&&(S.isRenderTarget===!0?C(S):U(S))}g.clear(),h.clear()}function H(I){let S=n.get(I);if(S.__webglInit===void 0)return;let Y=I.source,mt=f.get(Y);if(mt){let ct=mt[S.__cacheKey];ct.usedTimes--,ct.usedTimes===0&&B(I),Object.keys(mt).length===0&&f.delete(Y)}n.remove(I)}function B(I){let S=n.get(I);i.deleteTexture(S.__webglTexture);let Y=I.source,mt=f.get(Y);delete mt[S.__cacheKey],o.memory.textures--}function st(I){let S=n.get(I);S.__depthDisposeCallback&&S.__depthDisposeCallback();let Y=I.depthTexture;if(Y&&Y.renderTarget===I&&U(Y),I.isWebGLCubeRenderTarget)for(let ct=0;ct<6;ct++){if(Array.isArray(S.__webglFramebuffer[ct]))for(let St=0;St<S.__webglFramebuffer[ct].length;St++)i.deleteFramebuffer(S.__webglFramebuffer[ct][St]);else i.deleteFramebuffer(S.__webglFramebuffer[ct]);S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer[ct])}else{if(Array.isArray(S.__webglFramebuffer))for(let ct=0;ct<S.__webglFramebuffer.length;ct++)i.deleteFramebuffer(S.__webglFramebuffer[ct]);else i.deleteFramebuffer(S.__webglFramebuffer);if(S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer),S.__webglMultisampledFramebuffer&&i.deleteFramebuffer(S.__webglMultisampledFramebuffer),S.__webglColorRenderbuffer)for(let ct=0;ct<S.__webglColorRenderbuffer.length;ct++)S.__webglColorRenderbuffer[ct]&&i.deleteRenderbuffer(S.__webglColorRenderbuffer[ct]);S.__webglDepthRenderbuffer&&i.deleteRenderbuffer(S.__webglDepthRenderbuffer)}let mt=I.textures;for(let ct=0,St=mt.length;ct<St;ct++){let wt=n.get(mt[ct]);wt.__webglTexture&&(i.deleteTexture(wt.__webglTexture),o.memory.textures--),n.remove(mt[ct])}n.remove(I)}let X=0;function J(){X=0}function et(){return X}function ft(I){X=I}function lt(){let I=X;return I>=s.maxTextures&&Jt("WebGLTextures: Trying to use "+(I+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,I}function K(I){let S=[];return S.push(I.wrapS),S.push(I.wrapT),S.push(I.wrapR||0),S.push(I.magFilter),S.push(I.minFilter),S.push(I.anisotropy),S.push(I.internalFormat),S.push(I.format),S.push(I.type),S.push(I.generateMipmaps),S.push(I.mipmapsAutoUpdate),S.push(I.premultiplyAlpha),S.push(I.flipY),S.push(I.unpackAlignment),S.push(I.colorSpace),S.join()}function dt(I,S){let Y=n.get(I);if(I.isVideoTexture&&Oe(I),I.isRenderTargetTexture===!1&&I.isExternalTexture!==!0&&I.version>0&&Y.__version!==I.version){let mt=I.image;if(mt===null)Jt("WebGLRenderer: Texture marked for update but no image data found.");else if(mt.complete===!1)Jt("WebGLRenderer: Texture marked for update but image is incomplete");else{Ce(Y,I,S);return}}else I.isExternalTexture&&(Y.__webglTexture=I.sourceTexture?I.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,Y.__webglTexture,i.TEXTURE0+S)}function rt(I,S){let Y=n.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&Y.__version!==I.version){Ce(Y,I,S);return}else I.isExternalTexture&&(Y.__webglTexture=I.sourceTexture?I.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,Y.__webglTexture,i.TEXTURE0+S)}function _t(I,S){let Y=n.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&Y.__version!==I.version){Ce(Y,I,S);return}e.bindTexture(i.TEXTURE_3D,Y.__webglTexture,i.TEXTURE0+S)}function xt(I,S){let Y=n.get(I);if(I.version>0&&Y.__version!==I.version){on(Y,I,S);return}e.bindTexture(i.TEXTURE_CUBE_MAP,Y.__webglTexture,i.TEXTURE0+S)}let gt={[ql]:i.REPEAT,[Yi]:i.CLAMP_TO_EDGE,[Yl]:i.MIRRORED_REPEAT},It={[Cn]:i.NEAREST,[og]:i.NEAREST_MIPMAP_NEAREST,[Sa]:i.NEAREST_MIPMAP_LINEAR,[Jn]:i.LINEAR,[bc]:i.LINEAR_MIPMAP_NEAREST,[ys]:i.LINEAR_MIPMAP_LINEAR},Ut={[hg]:i.NEVER,[gd]:i.ALWAYS,[ug]:i.LESS,[pd]:i.LEQUAL,[dg]:i.EQUAL,[md]:i.GEQUAL,[fg]:i.GREATER,[pg]:i.NOTEQUAL};function ee(I,S){if(S.type===Fi&&t.has("OES_texture_float_linear")===!1&&(S.magFilter===Jn||S.magFilter===bc||S.magFilter===Sa||S.magFilter===ys||S.minFilter===Jn||S.minFilter===bc||S.minFilter===Sa||S.minFilter===ys)&&Jt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(I,i.TEXTURE_WRAP_S,gt[S.wrapS]),i.texParameteri(I,i.TEXTURE_WRAP_T,gt[S.wrapT]),(I===i.TEXTURE_3D||I===i.TEXTURE_2D_ARRAY)&&i.texParameteri(I,i.TEXTURE_WRAP_R,gt[S.wrapR]),i.texParameteri(I,i.TEXTURE_MAG_FILTER,It[S.magFilter]),i.texParameteri(I,i.TEXTURE_MIN_FILTER,It[S.minFilter]),S.compareFunction&&(i.texParameteri(I,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(I,i.TEXTURE_COMPARE_FUNC,Ut[S.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(S.magFilter===Cn||S.minFilter!==Sa&&S.minFilter!==ys||S.type===Fi&&t.has("OES_texture_float_linear")===!1)return;if(S.anisotropy>1||n.get(S).__currentAnisotropy){let Y=t.get("EXT_texture_filter_anisotropic");i.texParameterf(I,Y.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(S.anisotropy,s.getMaxAnisotropy())),n.get(S).__currentAnisotropy=S.anisotropy}}}function he(I,S){let Y=!1;I.__webglInit===void 0&&(I.__webglInit=!0,S.addEventListener("dispose",P),z(S));let mt=S.source,ct=f.get(mt);ct===void 0&&(ct={},f.set(mt,ct));let St=K(S);if(St!==I.__cacheKey){ct[St]===void 0&&(ct[St]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,Y=!0),ct[St].usedTimes++;let wt=ct[I.__cacheKey];wt!==void 0&&(ct[I.__cacheKey].usedTimes--,wt.usedTimes===0&&B(S)),I.__cacheKey=St,I.__webglTexture=ct[St].texture}return Y}function ne(I,S,Y){return Math.floor(Math.floor(I/Y)/S)}function Re(I,S,Y,mt){let St=I.updateRanges;if(St.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,S.width,S.height,Y,mt,S.data);else{St.sort((k,at)=>k.start-at.start);let wt=0;for(let k=1;k<St.length;k++){let at=St[wt],it=St[k],Rt=at.start+at.count,Mt=ne(it.start,S.width,4),Tt=ne(at.start,S.width,4);it.start<=Rt+1&&Mt===Tt&&ne(it.start+it.count-1,S.width,4)===Mt?at.count=Math.max(at.count,it.start+it.count-at.start):(++wt,St[wt]=it)}St.length=wt+1;let nt=e.getParameter(i.UNPACK_ROW_LENGTH),ot=e.getParameter(i.UNPACK_SKIP_PIXELS),bt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,S.width);for(let k=0,at=St.length;k<at;k++){let it=St[k],Rt=Math.floor(it.start/4),Mt=Math.ceil(it.count/4),Tt=Rt%S.width,$t=Math.floor(Rt/S.width),Qt=Mt,pt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Tt),e.pixelStorei(i.UNPACK_SKIP_ROWS,$t),e.texSubImage2D(i.TEXTURE_2D,0,Tt,$t,Qt,pt,Y,mt,S.data)}I.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,nt),e.pixelStorei(i.UNPACK_SKIP_PIXELS,ot),e.pixelStorei(i.UNPACK_SKIP_ROWS,bt)}}function Ce(I,S,Y){let mt=i.TEXTURE_2D;(S.isDataArrayTexture||S.isCompressedArrayTexture)&&(mt=i.TEXTURE_2D_ARRAY),S.isData3DTexture&&(mt=i.TEXTURE_3D);let ct=he(I,S),St=S.source;e.bindTexture(mt,I.__webglTexture,i.TEXTURE0+Y);let wt=n.get(St);if(St.version!==wt.__version||ct===!0){if(e.activeTexture(i.TEXTURE0+Y),(typeof ImageBitmap<"u"&&S.image instanceof ImageBitmap)===!1){let pt=be.getPrimaries(be.workingColorSpace),Gt=S.colorSpace===bs?null:be.getPrimaries(S.colorSpace),te=S.colorSpace===bs||pt===Gt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,te)}e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment);let ot=x(S.image,!1,s.maxTextureSize);ot=Xt(S,ot);let bt=r.convert(S.format,S.colorSpace),k=r.convert(S.type),at=w(S.internalFormat,bt,k,S.normalized,S.colorSpace,S.isVideoTexture);ee(mt,S);let it,Rt=S.mipmaps,Mt=S.isVideoTexture!==!0,Tt=wt.__version===void 0||ct===!0,$t=St.dataReady,Qt=M(S,ot);if(S.isDepthTexture)at=y(S.format===vs,S.type),Tt&&(Mt?e.texStorage2D(i.TEXTURE_2D,1,at,ot.width,ot.height):e.texImage2D(i.TEXTURE_2D,0,at,ot.width,ot.height,0,bt,k,null));else if(S.isDataTexture)if(Rt.length>0){Mt&&Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,at,Rt[0].width,Rt[0].height);for(let pt=0,Gt=Rt.length;pt<Gt;pt++)it=Rt[pt],Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,pt,0,0,it.width,it.height,bt,k,it.data):e.texImage2D(i.TEXTURE_2D,pt,at,it.width,it.height,0,bt,k,it.data);S.generateMipmaps=!1}else Mt?(Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,at,ot.width,ot.height),$t&&Re(S,ot,bt,k)):e.texImage2D(i.TEXTURE_2D,0,at,ot.width,ot.height,0,bt,k,ot.data);else if(S.isCompressedTexture)if(S.isCompressedArrayTexture){Mt&&Tt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,at,Rt[0].width,Rt[0].height,ot.depth);for(let pt=0,Gt=Rt.length;pt<Gt;pt++)if(it=Rt[pt],S.format!==Bi)if(bt!==null)if(Mt){if($t)if(S.layerUpdates.size>0){let te=Td(it.width,it.height,S.format,S.type);for(let Lt of S.layerUpdates){let ue=it.data.subarray(Lt*te/it.data.BYTES_PER_ELEMENT,(Lt+1)*te/it.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,pt,0,0,Lt,it.width,it.height,1,bt,ue)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,pt,0,0,0,it.width,it.height,ot.depth,bt,it.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,pt,at,it.width,it.height,ot.depth,0,it.data,0,0);else Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else Mt?$t&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,pt,0,0,0,it.width,it.height,ot.depth,bt,k,it.data):e.texImage3D(i.TEXTURE_2D_ARRAY,pt,at,it.width,it.height,ot.depth,0,bt,k,it.data);S.layerUpdates.size>0&&S.clearLayerUpdates()}else{Mt&&Tt&&e.texStorage2D(i.TEXTURE_2D,Qt,at,Rt[0].width,Rt[0].height);for(let pt=0,Gt=Rt.length;pt<Gt;pt++)it=Rt[pt],S.format!==Bi?bt!==null?Mt?$t&&e.compressedTexSubImage2D(i.TEXTURE_2D,pt,0,0,it.width,it.height,bt,it.data):e.compressedTexImage2D(i.TEXTURE_2D,pt,at,it.width,it.height,0,it.data):Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,pt,0,0,it.width,it.height,bt,k,it.data):e.texImage2D(i.TEXTURE_2D,pt,at,it.width,it.height,0,bt,k,it.data)}else if(S.isDataArrayTexture)if(Mt){if(Tt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,at,ot.width,ot.height,ot.depth),$t)if(S.layerUpdates.size>0){let pt=Td(ot.width,ot.height,S.format,S.type);for(let Gt of S.layerUpdates){let te=ot.data.subarray(Gt*pt/ot.data.BYTES_PER_ELEMENT,(Gt+1)*pt/ot.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Gt,ot.width,ot.height,1,bt,k,te)}S.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,ot.width,ot.height,ot.depth,bt,k,ot.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,at,ot.width,ot.height,ot.depth,0,bt,k,ot.data);else if(S.isData3DTexture)Mt?(Tt&&e.texStorage3D(i.TEXTURE_3D,Qt,at,ot.width,ot.height,ot.depth),$t&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,ot.width,ot.height,ot.depth,bt,k,ot.data)):e.texImage3D(i.TEXTURE_3D,0,at,ot.width,ot.height,ot.depth,0,bt,k,ot.data);else if(S.isFramebufferTexture){if(Tt)if(Mt)e.texStorage2D(i.TEXTURE_2D,Qt,at,ot.width,ot.height);else{let pt=ot.width,Gt=ot.height;for(let te=0;te<Qt;te++)e.texImage2D(i.TEXTURE_2D,te,at,pt,Gt,0,bt,k,null),pt>>=1,Gt>>=1}}else if(S.isHTMLTexture){if("texElementImage2D"in i){let pt=i.canvas;if(pt.hasAttribute("layoutsubtree")||pt.setAttribute("layoutsubtree","true"),ot.parentNode!==pt){pt.appendChild(ot),h.add(S),pt.onpaint=Gt=>{let te=Gt.changedElements;for(let Lt of h)te.includes(Lt.image)&&(Lt.needsUpdate=!0)},pt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,ot);else{let te=i.RGBA,Lt=i.RGBA,ue=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,te,Lt,ue,ot)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Rt.length>0){if(Mt&&Tt){let pt=Zt(Rt[0]);e.texStorage2D(i.TEXTURE_2D,Qt,at,pt.width,pt.height)}for(let pt=0,Gt=Rt.length;pt<Gt;pt++)it=Rt[pt],Mt?$t&&e.texSubImage2D(i.TEXTURE_2D,pt,0,0,bt,k,it):e.texImage2D(i.TEXTURE_2D,pt,at,bt,k,it);S.generateMipmaps=!1}else if(Mt){if(Tt){let pt=Zt(ot);e.texStorage2D(i.TEXTURE_2D,Qt,at,pt.width,pt.height)}$t&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,bt,k,ot)}else e.texImage2D(i.TEXTURE_2D,0,at,bt,k,ot);A(S)&&S.mipmapsAutoUpdate===!0&&b(mt),wt.__version=St.version,S.onUpdate&&S.onUpdate(S)}I.__version=S.version}function on(I,S,Y){if(S.image.length!==6)return;let mt=he(I,S),ct=S.source;e.bindTexture(i.TEXTURE_CUBE_MAP,I.__webglTexture,i.TEXTURE0+Y);let St=n.get(ct);if(ct.version!==St.__version||mt===!0){e.activeTexture(i.TEXTURE0+Y);let wt=be.getPrimaries(be.workingColorSpace),nt=S.colorSpace===bs?null:be.getPrimaries(S.colorSpace),ot=S.colorSpace===bs||wt===nt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,ot);let bt=S.isCompressedTexture||S.image[0].isCompressedTexture,k=S.image[0]&&S.image[0].isDataTexture,at=[];for(let Lt=0;Lt<6;Lt++)!bt&&!k?at[Lt]=x(S.image[Lt],!0,s.maxCubemapSize):at[Lt]=k?S.image[Lt].image:S.image[Lt],at[Lt]=Xt(S,at[Lt]);let it=at[0],Rt=r.convert(S.format,S.colorSpace),Mt=r.convert(S.type),Tt=w(S.internalFormat,Rt,Mt,S.normalized,S.colorSpace),$t=S.isVideoTexture!==!0,Qt=St.__version===void 0||mt===!0,pt=ct.dataReady,Gt=M(S,it);ee(i.TEXTURE_CUBE_MAP,S);let te;if(S.isDepthTexture){if(Tt=y(S.format===vs,S.type),Qt)if($t)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Tt,it.width,it.height);else for(let Lt=0;Lt<6;Lt++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Tt,it.width,it.height,0,Rt,Mt,null)}else if(bt){$t&&Qt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Gt,Tt,it.width,it.height);for(let Lt=0;Lt<6;Lt++){te=at[Lt].mipmaps;for(let ue=0;ue<te.length;ue++){let ze=te[ue];S.format!==Bi?Rt!==null?$t?pt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue,0,0,ze.width,ze.height,Rt,ze.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue,Tt,ze.width,ze.height,0,ze.data):Jt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):$t?pt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue,0,0,ze.width,ze.height,Rt,Mt,ze.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue,Tt,ze.width,ze.height,0,Rt,Mt,ze.data)}}}else{if(te=S.mipmaps,$t&&Qt){te.length>0&&Gt++;let Lt=Zt(at[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Gt,Tt,Lt.width,Lt.height)}for(let Lt=0;Lt<6;Lt++)if(k){$t?pt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,0,0,at[Lt].width,at[Lt].height,Rt,Mt,at[Lt].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Tt,at[Lt].width,at[Lt].height,0,Rt,Mt,at[Lt].data);for(let ue=0;ue<te.length;ue++){let Gn=te[ue].image[Lt].image;$t?pt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue+1,0,0,Gn.width,Gn.height,Rt,Mt,Gn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue+1,Tt,Gn.width,Gn.height,0,Rt,Mt,Gn.data)}}else{$t?pt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,0,0,Rt,Mt,at[Lt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Tt,Rt,Mt,at[Lt]);for(let ue=0;ue<te.length;ue++){let ze=te[ue];$t?pt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue+1,0,0,Rt,Mt,ze.image[Lt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,ue+1,Tt,Rt,Mt,ze.image[Lt])}}}A(S)&&S.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),St.__version=ct.version,S.onUpdate&&S.onUpdate(S)}I.__version=S.version}function Ue(I,S,Y,mt,ct,St){let wt=r.convert(Y.format,Y.colorSpace),nt=r.convert(Y.type),ot=w(Y.internalFormat,wt,nt,Y.normalized,Y.colorSpace),bt=n.get(S),k=n.get(Y);if(k.__renderTarget=S,!bt.__hasExternalTextures){let at=Math.max(1,S.width>>St),it=Math.max(1,S.height>>St);ct===i.TEXTURE_3D||ct===i.TEXTURE_2D_ARRAY?e.texImage3D(ct,St,ot,at,it,S.depth,0,wt,nt,null):e.texImage2D(ct,St,ot,at,it,0,wt,nt,null)}e.bindFramebuffer(i.FRAMEBUFFER,I),At(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,mt,ct,k.__webglTexture,0,ce(S)):(ct===i.TEXTURE_2D||ct>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&ct<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,mt,ct,k.__webglTexture,St),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Mn(I,S,Y){if(i.bindRenderbuffer(i.RENDERBUFFER,I),S.depthBuffer){let mt=S.depthTexture,ct=mt&&mt.isDepthTexture?mt.type:null,St=y(S.stencilBuffer,ct),wt=S.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;At(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ce(S),St,S.width,S.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ce(S),St,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,St,S.width,S.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,wt,i.RENDERBUFFER,I)}else{let mt=S.textures;for(let ct=0;ct<mt.length;ct++){let St=mt[ct],wt=r.convert(St.format,St.colorSpace),nt=r.convert(St.type),ot=w(St.internalFormat,wt,nt,St.normalized,St.colorSpace);At(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ce(S),ot,S.width,S.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,ce(S),ot,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,ot,S.width,S.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Me(I,S,Y){let mt=S.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,I),!(S.depthTexture&&S.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let ct=n.get(S.depthTexture);ct.__renderTarget=S;let St=mt?S.depthTexture.image[0]:S.depthTexture.image;(!ct.__webglTexture||St.width!==S.width||St.height!==S.height)&&(St.width=S.width,St.height=S.height,S.depthTexture.needsUpdate=!0),mt?xt(S.depthTexture,0):dt(S.depthTexture,0);let wt=ct.__webglTexture,nt=ce(S),ot=mt?i.TEXTURE_CUBE_MAP_POSITIVE_X+Y:i.TEXTURE_2D,bt=S.depthTexture.format===vs?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(S.depthTexture.format===ps)At(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,bt,ot,wt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,bt,ot,wt,0);else if(S.depthTexture.format===vs)At(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,bt,ot,wt,0,nt):i.framebufferTexture2D(i.FRAMEBUFFER,bt,ot,wt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function mn(I){let S=n.get(I),Y=I.isWebGLCubeRenderTarget===!0;if(S.__boundDepthTexture!==I.depthTexture){let mt=I.depthTexture;if(S.__depthDisposeCallback&&S.__depthDisposeCallback(),mt){let ct=()=>{delete S.__boundDepthTexture,delete S.__depthDisposeCallback,mt.removeEventListener("dispose",ct)};mt.addEventListener("dispose",ct),S.__depthDisposeCallback=ct}S.__boundDepthTexture=mt}if(I.depthTexture&&!S.__autoAllocateDepthBuffer)if(Y)for(let mt=0;mt<6;mt++)Me(S.__webglFramebuffer[mt],I,mt);else I.texture.mipmaps.length>0?Me(S.__webglFramebuffer[0],I,0):Me(S.__webglFramebuffer,I,0);else if(Y){S.__webglDepthbuffer=[];for(let mt=0;mt<6;mt++)if(e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[mt]),S.__webglDepthbuffer[mt]===void 0)S.__webglDepthbuffer[mt]=i.createRenderbuffer(),Mn(S.__webglDepthbuffer[mt],I,!1);else{let ct=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,St=S.__webglDepthbuffer[mt];i.bindRenderbuffer(i.RENDERBUFFER,St),i.framebufferRenderbuffer(i.FRAMEBUFFER,ct,i.RENDERBUFFER,St)}}else if(I.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer),S.__webglDepthbuffer===void 0)S.__webglDepthbuffer=i.createRenderbuffer(),Mn(S.__webglDepthbuffer,I,!1);else{let ct=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,St=S.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,St),i.framebufferRenderbuffer(i.FRAMEBUFFER,ct,i.RENDERBUFFER,St)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Je(I,S,Y){let mt=n.get(I);S!==void 0&&Ue(mt.__webglFramebuffer,I,I.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),Y!==void 0&&mn(I)}function an(I){let S=I.texture,Y=n.get(I),mt=n.get(S);I.addEventListener("dispose",L),z(I);let ct=I.textures,St=I.isWebGLCubeRenderTarget===!0,wt=ct.length>1;if(wt||(mt.__webglTexture===void 0&&(mt.__webglTexture=i.createTexture()),mt.__version=S.version,o.memory.textures++),St){Y.__webglFramebuffer=[];for(let nt=0;nt<6;nt++)if(S.mipmaps.length>0){Y.__webglFramebuffer[nt]=[];for(let ot=0;ot<S.mipmaps.length;ot++)Y.__webglFramebuffer[nt][ot]=i.createFramebuffer()}else Y.__webglFramebuffer[nt]=i.createFramebuffer()}else{if(S.mipmaps.length>0){Y.__webglFramebuffer=[];for(let nt=0;nt<S.mipmaps.length;nt++)Y.__webglFramebuffer[nt]=i.createFramebuffer()}else Y.__webglFramebuffer=i.createFramebuffer();if(wt)for(let nt=0,ot=ct.length;nt<ot;nt++){let bt=n.get(ct[nt]);bt.__webglTexture===void 0&&(bt.__webglTexture=i.createTexture(),o.memory.textures++)}if(I.samples>0&&At(I)===!1){Y.__webglMultisampledFramebuffer=i.createFramebuffer(),Y.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,Y.__webglMultisampledFramebuffer);for(let nt=0;nt<ct.length;nt++){let ot=ct[nt];Y.__webglColorRenderbuffer[nt]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt]);let bt=r.convert(ot.format,ot.colorSpace),k=r.convert(ot.type),at=w(ot.internalFormat,bt,k,ot.normalized,ot.colorSpace,I.isXRRenderTarget===!0),it=ce(I);i.renderbufferStorageMultisample(i.RENDERBUFFER,it,at,I.width,I.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+nt,i.RENDERBUFFER,Y.__webglColorRenderbuffer[nt])}i.bindRenderbuffer(i.RENDERBUFFER,null),I.depthBuffer&&(Y.__webglDepthRenderbuffer=i.createRenderbuffer(),Mn(Y.__webglDepthRenderbuffer,I,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(St){e.bindTexture(i.TEXTURE_CUBE_MAP,mt.__webglTexture),ee(i.TEXTURE_CUBE_MAP,S);for(let nt=0;nt<6;nt++)if(S.mipmaps.length>0)for(let ot=0;ot<S.mipmaps.length;ot++)Ue(Y.__webglFramebuffer[nt][ot],I,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,ot);else Ue(Y.__webglFramebuffer[nt],I,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+nt,0);A(S)?b(i.TEXTURE_CUBE_MAP):S.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}else if(wt){for(let nt=0,ot=ct.length;nt<ot;nt++){let bt=ct[nt],k=n.get(bt),at=i.TEXTURE_2D;(I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(at=I.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(at,k.__webglTexture),ee(at,bt),Ue(Y.__webglFramebuffer,I,bt,i.COLOR_ATTACHMENT0+nt,at,0),A(bt)&&b(at)}e.unbindTexture()}else{let nt=i.TEXTURE_2D;if((I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(nt=I.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(nt,mt.__webglTexture),ee(nt,S),S.mipmaps.length>0)for(let ot=0;ot<S.mipmaps.length;ot++)Ue(Y.__webglFramebuffer[ot],I,S,i.COLOR_ATTACHMENT0,nt,ot);else Ue(Y.__webglFramebuffer,I,S,i.COLOR_ATTACHMENT0,nt,0);A(S)?b(nt):S.mipmaps.length>0&&i.texParameteri(nt,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}I.depthBuffer&&mn(I)}function V(I){let S=I.textures;for(let Y=0,mt=S.length;Y<mt;Y++){let ct=S[Y];if(A(ct)&&ct.mipmapsAutoUpdate===!0){let St=R(I),wt=n.get(ct).__webglTexture;e.bindTexture(St,wt),b(St),e.unbindTexture()}}}let Dt=[];function jt(I){if(I.samples>0){if(At(I)===!1){let S=I.textures,Y=I.width,mt=I.height,ct=i.COLOR_BUFFER_BIT,St=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,wt=n.get(I),nt=S.length>1;if(nt)for(let bt=0;bt<S.length;bt++)e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+bt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+bt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,wt.__webglMultisampledFramebuffer),I.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer);for(let bt=0;bt<S.length;bt++){if(I.resolveDepthBuffer&&(I.depthBuffer&&(ct|=i.DEPTH_BUFFER_BIT),I.stencilBuffer&&I.resolveStencilBuffer&&(ct|=i.STENCIL_BUFFER_BIT)),nt){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,wt.__webglColorRenderbuffer[bt]);let k=n.get(S[bt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,k,0)}i.blitFramebuffer(0,0,Y,mt,0,0,Y,mt,ct,i.NEAREST),l===!0&&(Dt.length=0,Dt.push(i.COLOR_ATTACHMENT0+bt),I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&Dt.push(St),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,Dt))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),nt)for(let bt=0;bt<S.length;bt++){e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+bt,i.RENDERBUFFER,wt.__webglColorRenderbuffer[bt]);let k=n.get(S[bt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+bt,i.TEXTURE_2D,k,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglMultisampledFramebuffer)}else if(I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&l){let S=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[S])}}}function ce(I){return Math.min(s.maxSamples,I.samples)}function At(I){let S=n.get(I);return I.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&S.__useRenderToTexture!==!1}function Oe(I){let S=o.render.frame;u.get(I)!==S&&(u.set(I,S),I.update())}function Xt(I,S){let Y=I.colorSpace,mt=I.format,ct=I.type;return I.isCompressedTexture===!0||I.isVideoTexture===!0||Y!==ta&&Y!==bs&&(be.getTransfer(Y)===Ie?(mt!==Bi||ct!==ti)&&Jt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):se("WebGLTextures: Unsupported texture color space:",Y)),S}function Zt(I){return typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement?(c.width=I.naturalWidth||I.width,c.height=I.naturalHeight||I.height):typeof VideoFrame<"u"&&I instanceof VideoFrame?(c.width=I.displayWidth,c.height=I.displayHeight):(c.width=I.width,c.height=I.height),c}this.allocateTextureUnit=lt,this.resetTextureUnits=J,this.getTextureUnits=et,this.setTextureUnits=ft,this.setTexture2D=dt,this.setTexture2DArray=rt,this.setTexture3D=_t,this.setTextureCube=xt,this.rebindTextures=Je,this.setupRenderTarget=an,this.updateRenderTargetMipmap=V,this.updateMultisampleRenderTarget=jt,this.setupDepthRenderbuffer=mn,this.setupFrameBufferTexture=Ue,this.useMultisampledRTT=At,this.dispose=O}function Aw(i,t){function e(n,s=bs){let r,o=be.getTransfer(s);if(n===ti)return i.UNSIGNED_BYTE;if(n===Sc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===wc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===cd)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===hd)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===ad)return i.BYTE;if(n===ld)return i.SHORT;if(n===vo)return i.UNSIGNED_SHORT;if(n===Mc)return i.INT;if(n===Ui)return i.UNSIGNED_INT;if(n===Fi)return i.FLOAT;if(n===Oi)return i.HALF_FLOAT;if(n===ud)return i.ALPHA;if(n===dd)return i.RGB;if(n===Bi)return i.RGBA;if(n===ps)return i.DEPTH_COMPONENT;if(n===vs)return i.DEPTH_STENCIL;if(n===fd)return i.RED;if(n===Ec)return i.RED_INTEGER;if(n===qs)return i.RG;if(n===Tc)return i.RG_INTEGER;if(n===Ac)return i.RGBA_INTEGER;if(n===wa||n===Ea||n===Ta||n===Aa)if(o===Ie)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===wa)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Ea)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Ta)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Aa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===wa)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Ea)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Ta)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Aa)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===Rc||n===Cc||n===Pc||n===Ic)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===Rc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===Cc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Pc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Ic)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Lc||n===Dc||n===Nc||n===Uc||n===Fc||n===Ra||n===Oc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Lc||n===Dc)return o===Ie?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Nc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Uc)return r.COMPRESSED_R11_EAC;if(n===Fc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ra)return r.COMPRESSED_RG11_EAC;if(n===Oc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Bc||n===kc||n===zc||n===Vc||n===Gc||n===Hc||n===Wc||n===Xc||n===$c||n===qc||n===Yc||n===Zc||n===Jc||n===jc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Bc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===kc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===zc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Vc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Gc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Hc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Wc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Xc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===$c)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===qc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Yc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Zc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Jc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===jc)return o===Ie?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Kc||n===Qc||n===th)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Kc)return o===Ie?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Qc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===th)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===eh||n===nh||n===Ca||n===ih)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===eh)return r.COMPRESSED_RED_RGTC1_EXT;if(n===nh)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Ca)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===ih)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===_r?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var Rw=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Cw=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Ud=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new da(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Zi({vertexShader:Rw,fragmentShader:Cw,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Pn(new fr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Fd=class extends Di{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,u=null,h=null,d=null,f=null,g=null,_=typeof XRWebGLBinding<"u",p=new Ud,m={},x=e.getContextAttributes(),A=null,b=null,R=[],w=[],y=new re,M=null,z=null,F=new Zn;F.viewport=new Ye;let P=new Zn;P.viewport=new Ye;let L=[F,P],U=new _c,C=null,O=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(K){let dt=R[K];return dt===void 0&&(dt=new uo,R[K]=dt),dt.getTargetRaySpace()},this.getControllerGrip=function(K){let dt=R[K];return dt===void 0&&(dt=new uo,R[K]=dt),dt.getGripSpace()},this.getHand=function(K){let dt=R[K];return dt===void 0&&(dt=new uo,R[K]=dt),dt.getHandSpace()};function H(K){let dt=w.indexOf(K.inputSource);if(dt===-1)return;let rt=R[dt];rt!==void 0&&(rt.update(K.inputSource,K.frame,c||o),rt.dispatchEvent({type:K.type,data:K.inputSource}))}function B(){s.removeEventListener("select",H),s.removeEventListener("selectstart",H),s.removeEventListener("selectend",H),s.removeEventListener("squeeze",H),s.removeEventListener("squeezestart",H),s.removeEventListener("squeezeend",H),s.removeEventListener("end",B),s.removeEventListener("inputsourceschange",st);for(let K=0;K<R.length;K++){let dt=w[K];dt!==null&&(w[K]=null,R[K].disconnect(dt))}C=null,O=null,p.reset();for(let K in m)delete m[K];if(t.setRenderTarget(A),f=null,d=null,h=null,s=null,b=null,lt.stop(),n.isPresenting=!1,t.setPixelRatio(M),t.setSize(y.width,y.height,!1),z!==null){let K=z.camera;K.fov=z.fov,K.zoom=z.zoom,K.updateProjectionMatrix(),z=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(K){r=K,n.isPresenting===!0&&Jt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(K){a=K,n.isPresenting===!0&&Jt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(K){c=K},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return h===null&&_&&(h=new XRWebGLBinding(s,e)),h},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(K){if(s=K,s!==null){if(A=t.getRenderTarget(),s.addEventListener("select",H),s.addEventListener("selectstart",H),s.addEventListener("selectend",H),s.addEventListener("squeeze",H),s.addEventListener("squeezestart",H),s.addEventListener("squeezeend",H),s.addEventListener("end",B),s.addEventListener("inputsourceschange",st),x.xrCompatible!==!0&&await e.makeXRCompatible(),M=t.getPixelRatio(),t.getSize(y),_&&"createProjectionLayer"in XRWebGLBinding.prototype){let rt=null,_t=null,xt=null;x.depth&&(xt=x.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,rt=x.stencil?vs:ps,_t=x.stencil?_r:Ui);let gt={colorFormat:e.RGBA8,depthFormat:xt,scaleFactor:r};h=this.getBinding(),d=h.createProjectionLayer(gt),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),b=new fi(d.textureWidth,d.textureHeight,{format:Bi,type:ti,depthTexture:new xs(d.textureWidth,d.textureHeight,_t,void 0,void 0,void 0,void 0,void 0,void 0,rt),stencilBuffer:x.stencil,colorSpace:t.outputColorSpace,samples:x.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let rt={antialias:x.antialias,alpha:!0,depth:x.depth,stencil:x.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,rt),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),b=new fi(f.framebufferWidth,f.framebufferHeight,{format:Bi,type:ti,colorSpace:t.outputColorSpace,stencilBuffer:x.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),lt.setContext(s),lt.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function st(K){for(let dt=0;dt<K.removed.length;dt++){let rt=K.removed[dt],_t=w.indexOf(rt);_t>=0&&(w[_t]=null,R[_t].disconnect(rt))}for(let dt=0;dt<K.added.length;dt++){let rt=K.added[dt],_t=w.indexOf(rt);if(_t===-1){for(let gt=0;gt<R.length;gt++)if(gt>=w.length){w.push(rt),_t=gt;break}else if(w[gt]===null){w[gt]=rt,_t=gt;break}if(_t===-1)break}let xt=R[_t];xt&&xt.connect(rt)}}function X(K,dt){dt===null?K.matrixWorld.copy(K.matrix):K.matrixWorld.multiplyMatrices(dt.matrixWorld,K.matrix),K.matrixWorldInverse.copy(K.matrixWorld).invert()}this.updateCamera=function(K){if(s===null)return;let dt=K.near,rt=K.far;p.texture!==null&&(p.depthNear>0&&(dt=p.depthNear),p.depthFar>0&&(rt=p.depthFar)),U.near=P.near=F.near=dt,U.far=P.far=F.far=rt,(C!==U.near||O!==U.far)&&(s.updateRenderState({depthNear:U.near,depthFar:U.far}),C=U.near,O=U.far),U.layers.mask=K.layers.mask|6,F.layers.mask=U.layers.mask&-5,P.layers.mask=U.layers.mask&-3;let _t=K.parent,xt=U.cameras;X(U,_t);for(let gt=0;gt<xt.length;gt++)X(xt[gt],_t);U.projectionMatrix.copy(F.projectionMatrix),U.projectionMatrixInverse.copy(F.projectionMatrixInverse),z===null&&K.isPerspectiveCamera&&(z={camera:K,fov:K.fov,zoom:K.zoom}),J(K,U,_t)};function J(K,dt,rt){rt===null?K.matrix.copy(dt.matrixWorld):(K.matrix.copy(rt.matrixWorld),K.matrix.invert(),K.matrix.multiply(dt.matrixWorld)),K.matrix.decompose(K.position,K.quaternion,K.scale),K.updateMatrixWorld(!0),K.projectionMatrix.copy(dt.projectionMatrix),K.projectionMatrixInverse.copy(dt.projectionMatrixInverse),K.isPerspectiveCamera&&(K.fov=co*2*Math.atan(1/K.projectionMatrix.elements[5]),K.zoom=1)}this.getCamera=function(){return U},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function(K){l=K,d!==null&&(d.fixedFoveation=K),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=K)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(U)},this.getCameraTexture=function(K){return m[K]};let et=null;function ft(K,dt){if(u=dt.getViewerPose(c||o),g=dt,u!==null){let rt=u.views;f!==null&&(t.setRenderTargetFramebuffer(b,f.framebuffer),t.setRenderTarget(b));let _t=!1;rt.length!==U.cameras.length&&(U.cameras.length=0,_t=!0);for(let Ut=0;Ut<rt.length;Ut++){let ee=rt[Ut],he=null;if(f!==null)he=f.getViewport(ee);else{let Re=h.getViewSubImage(d,ee);he=Re.viewport,Ut===0&&(t.setRenderTargetTextures(b,Re.colorTexture,Re.depthStencilTexture),t.setRenderTarget(b))}let ne=L[Ut];ne===void 0&&(ne=new Zn,ne.layers.enable(Ut),ne.viewport=new Ye,L[Ut]=ne),ne.matrix.fromArray(ee.transform.matrix),ne.matrix.decompose(ne.position,ne.quaternion,ne.scale),ne.projectionMatrix.fromArray(ee.projectionMatrix),ne.projectionMatrixInverse.copy(ne.projectionMatrix).invert(),ne.viewport.set(he.x,he.y,he.width,he.height),Ut===0&&(U.matrix.copy(ne.matrix),U.matrix.decompose(U.position,U.quaternion,U.scale)),_t===!0&&U.cameras.push(ne)}let xt=s.enabledFeatures;if(xt&&xt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&_){h=n.getBinding();let Ut=h.getDepthInformation(rt[0]);Ut&&Ut.isValid&&Ut.texture&&p.init(Ut,s.renderState)}if(xt&&xt.includes("camera-access")&&_){t.state.unbindTexture(),h=n.getBinding();for(let Ut=0;Ut<rt.length;Ut++){let ee=rt[Ut].camera;if(ee){let he=m[ee];he||(he=new da,m[ee]=he);let ne=h.getCameraImage(ee);he.sourceTexture=ne}}}}for(let rt=0;rt<R.length;rt++){let _t=w[rt],xt=R[rt];_t!==null&&xt!==void 0&&xt.update(_t,dt,c||o)}et&&et(K,dt),dt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:dt}),g=null}let lt=new qg;lt.setAnimationLoop(ft),this.setAnimationLoop=function(K){et=K},this.dispose=function(){}}},Pw=new $e,i0=new oe;i0.set(-1,0,0,0,1,0,0,0,1);function Iw(i,t){function e(p,m){p.matrixAutoUpdate===!0&&p.updateMatrix(),m.value.copy(p.matrix)}function n(p,m){m.color.getRGB(p.fogColor.value,Sd(i)),m.isFog?(p.fogNear.value=m.near,p.fogFar.value=m.far):m.isFogExp2&&(p.fogDensity.value=m.density)}function s(p,m,x,A,b){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(p,m):m.isMeshLambertMaterial?(r(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(p,m),h(p,m)):m.isMeshPhongMaterial?(r(p,m),u(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(p,m),d(p,m),m.isMeshPhysicalMaterial&&f(p,m,b)):m.isMeshMatcapMaterial?(r(p,m),g(p,m)):m.isMeshDepthMaterial?r(p,m):m.isMeshDistanceMaterial?(r(p,m),_(p,m)):m.isMeshNormalMaterial?r(p,m):m.isLineBasicMaterial?(o(p,m),m.isLineDashedMaterial&&a(p,m)):m.isPointsMaterial?l(p,m,x,A):m.isSpriteMaterial?c(p,m):m.isShadowMaterial?(p.color.value.copy(m.color),p.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(p,m){p.opacity.value=m.opacity,m.color&&p.diffuse.value.copy(m.color),m.emissive&&p.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.bumpMap&&(p.bumpMap.value=m.bumpMap,e(m.bumpMap,p.bumpMapTransform),p.bumpScale.value=m.bumpScale,m.side===Nn&&(p.bumpScale.value*=-1)),m.normalMap&&(p.normalMap.value=m.normalMap,e(m.normalMap,p.normalMapTransform),p.normalScale.value.copy(m.normalScale),m.side===Nn&&p.normalScale.value.negate()),m.displacementMap&&(p.displacementMap.value=m.displacementMap,e(m.displacementMap,p.displacementMapTransform),p.displacementScale.value=m.displacementScale,p.displacementBias.value=m.displacementBias),m.emissiveMap&&(p.emissiveMap.value=m.emissiveMap,e(m.emissiveMap,p.emissiveMapTransform)),m.specularMap&&(p.specularMap.value=m.specularMap,e(m.specularMap,p.specularMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest);let x=t.get(m),A=x.envMap,b=x.envMapRotation;A&&(p.envMap.value=A,p.envMapRotation.value.setFromMatrix4(Pw.makeRotationFromEuler(b)).transpose(),A.isCubeTexture&&A.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(i0),p.reflectivity.value=m.reflectivity,p.ior.value=m.ior,p.refractionRatio.value=m.refractionRatio),m.lightMap&&(p.lightMap.value=m.lightMap,p.lightMapIntensity.value=m.lightMapIntensity,e(m.lightMap,p.lightMapTransform)),m.aoMap&&(p.aoMap.value=m.aoMap,p.aoMapIntensity.value=m.aoMapIntensity,e(m.aoMap,p.aoMapTransform))}function o(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform))}function a(p,m){p.dashSize.value=m.dashSize,p.totalSize.value=m.dashSize+m.gapSize,p.scale.value=m.scale}function l(p,m,x,A){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.size.value=m.size*x,p.scale.value=A*.5,m.map&&(p.map.value=m.map,e(m.map,p.uvTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function c(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.rotation.value=m.rotation,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function u(p,m){p.specular.value.copy(m.specular),p.shininess.value=Math.max(m.shininess,1e-4)}function h(p,m){m.gradientMap&&(p.gradientMap.value=m.gradientMap)}function d(p,m){p.metalness.value=m.metalness,m.metalnessMap&&(p.metalnessMap.value=m.metalnessMap,e(m.metalnessMap,p.metalnessMapTransform)),p.roughness.value=m.roughness,m.roughnessMap&&(p.roughnessMap.value=m.roughnessMap,e(m.roughnessMap,p.roughnessMapTransform)),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)}function f(p,m,x){p.ior.value=m.ior,m.diffuseRoughness>0&&(p.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=m.diffuseRoughnessMap,e(m.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),m.sheen>0&&(p.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),p.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(p.sheenColorMap.value=m.sheenColorMap,e(m.sheenColorMap,p.sheenColorMapTransform)),m.sheenRoughnessMap&&(p.sheenRoughnessMap.value=m.sheenRoughnessMap,e(m.sheenRoughnessMap,p.sheenRoughnessMapTransform))),m.clearcoat>0&&(p.clearcoat.value=m.clearcoat,p.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(p.clearcoatMap.value=m.clearcoatMap,e(m.clearcoatMap,p.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,e(m.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(p.clearcoatNormalMap.value=m.clearcoatNormalMap,e(m.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===Nn&&p.clearcoatNormalScale.value.negate())),m.dispersion>0&&(p.dispersion.value=m.dispersion),m.retroreflectivity>0&&(p.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(p.iridescence.value=m.iridescence,p.iridescenceIOR.value=m.iridescenceIOR,p.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(p.iridescenceMap.value=m.iridescenceMap,e(m.iridescenceMap,p.iridescenceMapTransform)),m.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=m.iridescenceThicknessMap,e(m.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),m.transmission>0&&(p.transmission.value=m.transmission,p.transmissionSamplerMap.value=x.texture,p.transmissionSamplerSize.value.set(x.width,x.height),m.transmissionMap&&(p.transmissionMap.value=m.transmissionMap,e(m.transmissionMap,p.transmissionMapTransform)),p.thickness.value=m.thickness,m.thicknessMap&&(p.thicknessMap.value=m.thicknessMap,e(m.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=m.attenuationDistance,p.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(p.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(p.anisotropyMap.value=m.anisotropyMap,e(m.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=m.specularIntensity,p.specularColor.value.copy(m.specularColor),m.specularColorMap&&(p.specularColorMap.value=m.specularColorMap,e(m.specularColorMap,p.specularColorMapTransform)),m.specularIntensityMap&&(p.specularIntensityMap.value=m.specularIntensityMap,e(m.specularIntensityMap,p.specularIntensityMapTransform))}function g(p,m){m.matcap&&(p.matcap.value=m.matcap)}function _(p,m){let x=t.get(m).light;p.referencePosition.value.setFromMatrixPosition(x.matrixWorld),p.nearDistance.value=x.shadow.camera.near,p.farDistance.value=x.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Lw(i,t,e,n){let s={},r={};function o(x,A){let b=A.program;n.uniformBlockBinding(x,b,s[x.id])}function a(x,A){let b=s[x.id];b===void 0&&(g(x),b=l(x),s[x.id]=b,x.addEventListener("dispose",p));let R=A.program;n.updateUBOMapping(x,R);let w=t.render.frame;r[x.id]!==w&&(c(x),r[x.id]=w)}function l(x){let A=i.createBuffer(),b=x.__size,R=x.usage;return i.bindBuffer(i.UNIFORM_BUFFER,A),i.bufferData(i.UNIFORM_BUFFER,b,R),i.bindBuffer(i.UNIFORM_BUFFER,null),A}function c(x){let A=s[x.id],b=x.uniforms,R=x.__cache;i.bindBuffer(i.UNIFORM_BUFFER,A);for(let w=0,y=b.length;w<y;w++){let M=b[w];if(Array.isArray(M))for(let z=0,F=M.length;z<F;z++)u(M[z],w,z,R);else u(M,w,0,R)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function u(x,A,b,R){if(d(x,A,b,R)===!0){let w=x.__offset,y=x.value;if(Array.isArray(y)){let M=0;for(let z=0;z<y.length;z++){let F=y[z],P=_(F,!0);h(F,x.__data,M),M+=P.storage/Float32Array.BYTES_PER_ELEMENT}}else h(y,x.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,x.__data)}}function h(x,A,b){typeof x=="number"||typeof x=="boolean"?A[b]=x:x.isMatrix3?(A[b]=x.elements[0],A[b+1]=x.elements[1],A[b+2]=x.elements[2],A[b+3]=0,A[b+4]=x.elements[3],A[b+5]=x.elements[4],A[b+6]=x.elements[5],A[b+7]=0,A[b+8]=x.elements[6],A[b+9]=x.elements[7],A[b+10]=x.elements[8],A[b+11]=0):ArrayBuffer.isView(x)?A.set(x.subarray(0,A.length-b),b):x.toArray(A,b)}function d(x,A,b,R){let w=x.value,y=A+"_"+b;if(Array.isArray(w)){R[y]===void 0&&(R[y]=[]);let M=R[y],z=!1;for(let F=0;F<w.length;F++)f(w[F],M,F)===!0&&(z=!0);return z}return f(w,R,y)}function f(x,A,b){if(A[b]===void 0)return typeof x=="number"||typeof x=="boolean"?A[b]=x:ArrayBuffer.isView(x)?A[b]=x.slice():A[b]=x.clone(),!0;{let R=A[b];if(typeof x=="number"||typeof x=="boolean"){if(R!==x)return A[b]=x,!0}else{if(ArrayBuffer.isView(x))return!0;if(R.equals(x)===!1)return R.copy(x),!0}}return!1}function g(x){let A=x.uniforms,b=0,R=16;for(let y=0,M=A.length;y<M;y++){let z=Array.isArray(A[y])?A[y]:[A[y]];for(let F=0,P=z.length;F<P;F++){let L=z[F],U=Array.isArray(L.value)?L.value:[L.value],C=Array.isArray(A[y])||Array.isArray(L.value),O=b;for(let B=0,st=U.length;B<st;B++){let X=U[B],J=_(X,C),et=b%R,ft=et%J.boundary,lt=et+ft;b+=ft,lt!==0&&R-lt<J.storage&&(b+=R-lt),B===0&&(O=b),b+=J.storage}let H=L.type==="int"?Int32Array:L.type==="uint"?Uint32Array:Float32Array;L.__data=new H((b-O)/Float32Array.BYTES_PER_ELEMENT),L.__offset=O}}let w=b%R;return w>0&&(b+=R-w),x.__size=b,x.__cache={},this}function _(x,A){let b={boundary:0,storage:0};return typeof x=="number"||typeof x=="boolean"?(b.boundary=4,b.storage=4):x.isVector2?(b.boundary=8,b.storage=8):x.isVector3||x.isColor?(b.boundary=16,b.storage=12):x.isVector4?(b.boundary=16,b.storage=16):x.isMatrix3?(b.boundary=16,b.storage=48):x.isMatrix4?(b.boundary=16,b.storage=64):x.isTexture?Jt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(x)?(b.boundary=16,b.storage=x.byteLength):Jt("WebGLRenderer: Unsupported uniform value type.",x),A===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function p(x){let A=x.target;A.removeEventListener("dispose",p),i.deleteBuffer(s[A.id]),delete s[A.id],delete r[A.id]}function m(){for(let x in s)i.deleteBuffer(s[x]);s={},r={}}return{bind:o,update:a,dispose:m}}var Dw=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),ji=null;function Nw(){return ji===null&&(ji=new Ql(Dw,16,16,qs,Oi),ji.name="DFG_LUT",ji.minFilter=Jn,ji.magFilter=Jn,ji.wrapS=Yi,ji.wrapT=Yi,ji.generateMipmaps=!1,ji.needsUpdate=!0),ji}var lh=class{constructor(t={}){let{canvas:e=gg(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:d=!1,outputBufferType:f=ti}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let _=f,p=new Set([Ac,Tc,Ec]),m=new Set([ti,Ui,vo,_r,Sc,wc]),x=new Uint32Array(4),A=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},R=null,w=null,y=[],M=[],z=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Ji,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let F=this,P=!1,L=null,U=null,C=null,O=null;this._outputColorSpace=ui;let H=0,B=0,st=null,X=-1,J=null,et=new Ye,ft=new Ye,lt=null,K=new le(0),dt=0,rt=e.width,_t=e.height,xt=1,gt=null,It=null,Ut=new Ye(0,0,rt,_t),ee=new Ye(0,0,rt,_t),he=!1,ne=new zs,Re=new tc,Ce=!1,on=!1,Ue=new $e,Mn=new $,Me=new Ye,mn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Je=!1;function an(){return st===null?xt:1}let V=n;function Dt(T,G){return e.getContext(T,G)}let jt,ce,At,Oe,Xt,Zt,I,S,Y,mt,ct,St,wt,nt,ot,bt,k,at,it,Rt,Mt,Tt,$t;try{let T={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Gt,!1),e.addEventListener("webglcontextrestored",te,!1),e.addEventListener("webglcontextcreationerror",Lt,!1),V===null){let G="webgl2";if(V=Dt(G,T),V===null)throw Dt(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Qt()}catch(T){throw e.removeEventListener("webglcontextlost",Gt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Lt,!1),se("WebGLRenderer: "+T.message),T}function Qt(){jt=new XM(V),jt.init(),Mt=new Aw(V,jt),ce=new NM(V,jt,t,Mt),At=new Ew(V,jt),ce.reversedDepthBuffer&&d&&At.buffers.depth.setReversed(!0),U=V.createFramebuffer(),C=V.createFramebuffer(),O=V.createFramebuffer(),Oe=new YM(V),Xt=new uw,Zt=new Tw(V,jt,At,Xt,ce,Mt,Oe),I=new WM(F),S=new Jy(V),Tt=new LM(V,S),Y=new $M(V,S,Oe,Tt),mt=new JM(V,Y,S,Tt,Oe),at=new ZM(V,ce,Zt),ot=new UM(Xt),ct=new hw(F,I,jt,ce,Tt,ot),St=new Iw(F,Xt),wt=new fw,nt=new yw(jt),k=new IM(F,I,At,mt,g,l),bt=new ww(F,mt,ce),$t=new Lw(V,Oe,ce,At),it=new DM(V,jt,Oe),Rt=new qM(V,jt,Oe),Oe.programs=ct.programs,F.capabilities=ce,F.extensions=jt,F.properties=Xt,F.renderLists=wt,F.shadowMap=bt,F.state=At,F.info=Oe}_!==ti&&(z=new KM(_,e.width,e.height,a,s,r));let pt=new Fd(F,V);this.xr=pt,this.getContext=function(){return V},this.getContextAttributes=function(){return V.getContextAttributes()},this.forceContextLoss=function(){let T=jt.get("WEBGL_lose_context");T&&T.loseContext()},this.forceContextRestore=function(){let T=jt.get("WEBGL_lose_context");T&&T.restoreContext()},this.getPixelRatio=function(){return xt},this.setPixelRatio=function(T){T!==void 0&&(xt=T,this.setSize(rt,_t,!1))},this.getSize=function(T){return T.set(rt,_t)},this.setSize=function(T,G,tt=!0){if(pt.isPresenting){Jt("WebGLRenderer: Can't change size while VR device is presenting.");return}rt=T,_t=G,e.width=Math.floor(T*xt),e.height=Math.floor(G*xt),tt===!0&&(e.style.width=T+"px",e.style.height=G+"px"),z!==null&&z.setSize(e.width,e.height),this.setViewport(0,0,T,G)},this.getDrawingBufferSize=function(T){return T.set(rt*xt,_t*xt).floor()},this.setDrawingBufferSize=function(T,G,tt){rt=T,_t=G,xt=tt,e.width=Math.floor(T*tt),e.height=Math.floor(G*tt),this.setViewport(0,0,T,G)},this.setEffects=function(T){if(_===ti){se("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(T){for(let G=0;G<T.length;G++)if(T[G].isOutputPass===!0){Jt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}z.setEffects(T||[])},this.getCurrentViewport=function(T){return T.copy(et)},this.getViewport=function(T){return T.copy(Ut)},this.setViewport=function(T,G,tt,Z){T.isVector4?Ut.set(T.x,T.y,T.z,T.w):Ut.set(T,G,tt,Z),At.viewport(et.copy(Ut).multiplyScalar(an()).round())},this.getScissor=function(T){return T.copy(ee)},this.setScissor=function(T,G,tt,Z){T.isVector4?ee.set(T.x,T.y,T.z,T.w):ee.set(T,G,tt,Z),At.scissor(ft.copy(ee).multiplyScalar(an()).round())},this.getScissorTest=function(){return he},this.setScissorTest=function(T){At.setScissorTest(he=T)},this.setOpaqueSort=function(T){gt=T},this.setTransparentSort=function(T){It=T},this.getClearColor=function(T){return T.copy(k.getClearColor())},this.setClearColor=function(){k.setClearColor(...arguments)},this.getClearAlpha=function(){return k.getClearAlpha()},this.setClearAlpha=function(){k.setClearAlpha(...arguments)},this.clear=function(T=!0,G=!0,tt=!0){let Z=0;if(T){let j=!1;if(st!==null){let Ct=st.texture.format;j=p.has(Ct)}if(j){let Ct=st.texture.type,Nt=m.has(Ct),Pt=k.getClearColor(),Ft=k.getClearAlpha(),Wt=Pt.r,ie=Pt.g,me=Pt.b;Nt?(x[0]=Wt,x[1]=ie,x[2]=me,x[3]=Ft,V.clearBufferuiv(V.COLOR,0,x)):(A[0]=Wt,A[1]=ie,A[2]=me,A[3]=Ft,V.clearBufferiv(V.COLOR,0,A))}else Z|=V.COLOR_BUFFER_BIT}G&&(Z|=V.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),tt&&(Z|=V.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),Z!==0&&V.clear(Z)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(T){T.setRenderer(this),L=T},this.dispose=function(){e.removeEventListener("webglcontextlost",Gt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Lt,!1),k.dispose(),wt.dispose(),nt.dispose(),Zt.dispose(),Xt.dispose(),I.dispose(),mt.dispose(),Y.dispose(),Tt.dispose(),$t.dispose(),ct.dispose(),pt.dispose(),pt.removeEventListener("sessionstart",Ba),pt.removeEventListener("sessionend",ki),Qi.stop()};function Gt(T){T.preventDefault(),xd("WebGLRenderer: Context Lost."),P=!0}function te(){xd("WebGLRenderer: Context Restored."),P=!1;let T=Oe.autoReset,G=bt.enabled,tt=bt.autoUpdate,Z=bt.needsUpdate,j=bt.type;Qt(),Oe.autoReset=T,bt.enabled=G,bt.autoUpdate=tt,bt.needsUpdate=Z,bt.type=j}function Lt(T){se("WebGLRenderer: A WebGL context could not be created. Reason: ",T.statusMessage)}function ue(T){let G=T.target;G.removeEventListener("dispose",ue),ze(G)}function ze(T){Gn(T),Xt.remove(T)}function Gn(T){let G=Xt.get(T).programs;G!==void 0&&(G.forEach(function(tt){ct.releaseProgram(tt)}),T.isShaderMaterial&&ct.releaseShaderCache(T))}this.renderBufferDirect=function(T,G,tt,Z,j,Ct){G===null&&(G=mn);let Nt=j.isMesh&&j.matrixWorld.determinantAffine()<0,Pt=Ao(T,G,tt,Z,j);At.setMaterial(Z,Nt);let Ft=tt.index,Wt=1;if(Z.wireframe===!0){if(Ft=Y.getWireframeAttribute(tt),Ft===void 0)return;Wt=2}let ie=tt.drawRange,me=tt.attributes.position,Ht=ie.start*Wt,ge=(ie.start+ie.count)*Wt;Ct!==null&&(Ht=Math.max(Ht,Ct.start*Wt),ge=Math.min(ge,(Ct.start+Ct.count)*Wt)),Ft!==null?(Ht=Math.max(Ht,0),ge=Math.min(ge,Ft.count)):me!=null&&(Ht=Math.max(Ht,0),ge=Math.min(ge,me.count));let Ze=ge-Ht;if(Ze<0||Ze===1/0)return;Tt.setup(j,Z,Pt,tt,Ft);let Le,De=it;if(Ft!==null&&(Le=S.get(Ft),De=Rt,De.setIndex(Le)),j.isMesh)Z.wireframe===!0?(At.setLineWidth(Z.wireframeLinewidth*an()),De.setMode(V.LINES)):De.setMode(V.TRIANGLES);else if(j.isLine){let gn=Z.linewidth;gn===void 0&&(gn=1),At.setLineWidth(gn*an()),j.isLineSegments?De.setMode(V.LINES):j.isLineLoop?De.setMode(V.LINE_LOOP):De.setMode(V.LINE_STRIP)}else j.isPoints?De.setMode(V.POINTS):j.isSprite&&De.setMode(V.TRIANGLES);if(j.isBatchedMesh)if(jt.get("WEBGL_multi_draw"))De.renderMultiDraw(j._multiDrawStarts,j._multiDrawCounts,j._multiDrawCount);else{let gn=j._multiDrawStarts,zt=j._multiDrawCounts,ln=j._multiDrawCount,ye=Ft?S.get(Ft).bytesPerElement:1,es=Xt.get(Z).currentProgram.getUniforms();for(let cn=0;cn<ln;cn++)es.setValue(V,"_gl_DrawID",cn),De.render(gn[cn]/ye,zt[cn])}else if(j.isInstancedMesh)De.renderInstances(Ht,Ze,j.count);else if(tt.isInstancedBufferGeometry){let gn=tt._maxInstanceCount!==void 0?tt._maxInstanceCount:1/0,zt=Math.min(tt.instanceCount,gn);De.renderInstances(Ht,Ze,zt)}else De.render(Ht,Ze)};function wo(T,G,tt,Z){L!==null&&T.isNodeMaterial&&L.setObject(Z,T),Ce===!0&&ot.setState(T,tt,!1),T.transparent===!0&&T.side===jn&&T.forceSinglePass===!1?(T.side=Nn,T.needsUpdate=!0,zi(T,G,Z),T.side=Ni,T.needsUpdate=!0,zi(T,G,Z),T.side=jn):zi(T,G,Z)}this.compile=function(T,G,tt=null){tt===null&&(tt=T),L!==null&&L.renderStart(T,G,tt),w=nt.get(tt),w.init(G),M.push(w),tt.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(w.pushLight(j),j.castShadow&&w.pushShadow(j))}),T!==tt&&T.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(w.pushLight(j),j.castShadow&&w.pushShadow(j))}),w.setupLights(),L!==null&&L.updateLights(w.state.lightsArray),on=this.localClippingEnabled,Ce=ot.init(this.clippingPlanes,on),Ce===!0&&ot.setGlobalState(this.clippingPlanes,G),L!==null&&bt.render(w.state.shadowsArray,tt,G);let Z=new Set;return T.traverse(function(j){if(!(j.isMesh||j.isPoints||j.isLine||j.isSprite))return;let Ct=j.material;if(Ct)if(Array.isArray(Ct))for(let Nt=0;Nt<Ct.length;Nt++){let Pt=Ct[Nt];wo(Pt,tt,G,j),Z.add(Pt)}else wo(Ct,tt,G,j),Z.add(Ct)}),w=M.pop(),L!==null&&L.renderEnd(),Z},this.compileAsync=function(T,G,tt=null){let Z=this.compile(T,G,tt);return new Promise(j=>{function Ct(){if(Z.forEach(function(Nt){let Ft=Xt.get(Nt).currentProgram;(Ft===void 0||Ft.isReady())&&Z.delete(Nt)}),Z.size===0){j(T);return}setTimeout(Ct,10)}jt.get("KHR_parallel_shader_compile")!==null?Ct():setTimeout(Ct,10)})};let br=null;function Th(T){br&&br(T)}function Ba(){Qi.stop()}function ki(){Qi.start()}let Qi=new qg;Qi.setAnimationLoop(Th),typeof self<"u"&&Qi.setContext(self),this.setAnimationLoop=function(T){br=T,pt.setAnimationLoop(T),T===null?Qi.stop():Qi.start()},pt.addEventListener("sessionstart",Ba),pt.addEventListener("sessionend",ki),this.render=function(T,G){if(G!==void 0&&G.isCamera!==!0){se("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(P===!0)return;L!==null&&L.renderStart(T,G);let tt=pt.enabled===!0&&pt.isPresenting===!0,Z=z!==null&&(st===null||tt)&&z.begin(F,st);if(T.matrixWorldAutoUpdate===!0&&T.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),pt.enabled===!0&&pt.isPresenting===!0&&(z===null||z.isCompositing()===!1)&&(pt.cameraAutoUpdate===!0&&pt.updateCamera(G),G=pt.getCamera()),T.isScene===!0&&T.onBeforeRender(F,T,G,st),w=nt.get(T,M.length),w.init(G),w.state.textureUnits=Zt.getTextureUnits(),M.push(w),Ue.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?Re.setFromArrayCamera(G):ne.setFromProjectionMatrix(Ue,bi,G.reversedDepth),on=this.localClippingEnabled,Ce=ot.init(this.clippingPlanes,on),R=wt.get(T,y.length),R.init(),y.push(R),this.info.render.frame++,pt.enabled===!0&&pt.isPresenting===!0){let Nt=F.xr.getDepthSensingMesh();Nt!==null&&ts(Nt,G,-1/0,F.sortObjects)}ts(T,G,0,F.sortObjects),R.finish(),L!==null&&L.updateLights(w.state.lightsArray),F.sortObjects===!0&&R.sort(gt,It),Je=pt.enabled===!1||pt.isPresenting===!1||pt.hasDepthSensing()===!1,Je&&k.addToRenderList(R,T),this.info.autoReset===!0&&this.info.reset(),Ce===!0&&ot.beginShadows();let j=w.state.shadowsArray;if(bt.render(j,T,G),Ce===!0&&ot.endShadows(),(Z&&z.hasRenderPass())===!1){let Nt=R.opaque,Pt=R.transmissive;if(w.setupLights(),G.isArrayCamera){let Ft=G.cameras;if(Pt.length>0)for(let Wt=0,ie=Ft.length;Wt<ie;Wt++){let me=Ft[Wt];Mi(Nt,Pt,T,me)}Je&&k.render(T);for(let Wt=0,ie=Ft.length;Wt<ie;Wt++){let me=Ft[Wt];Eo(R,T,me,me.viewport)}}else Pt.length>0&&Mi(Nt,Pt,T,G),Je&&k.render(T),Eo(R,T,G)}st!==null&&B===0&&(Zt.updateMultisampleRenderTarget(st),Zt.updateRenderTargetMipmap(st)),Z&&z.end(F),T.isScene===!0&&T.onAfterRender(F,T,G),Tt.resetDefaultState(),X=-1,J=null,M.pop(),M.length>0?(w=M[M.length-1],Zt.setTextureUnits(w.state.textureUnits),Ce===!0&&ot.setGlobalState(F.clippingPlanes,w.state.camera)):w=null,y.pop(),y.length>0?R=y[y.length-1]:R=null,L!==null&&L.renderEnd()};function ts(T,G,tt,Z){if(T.visible===!1)return;if(T.layers.test(G.layers)){if(T.isGroup)tt=T.renderOrder;else if(T.isLOD)T.autoUpdate===!0&&T.update(G);else if(T.isLight)w.pushLight(T),T.castShadow&&w.pushShadow(T);else if(T.isSprite){let Nt=G.isArrayCamera?Re:ne;if(!T.frustumCulled||T.intersectsFrustum(Nt)){Z&&Me.setFromMatrixPosition(T.matrixWorld).applyMatrix4(Ue);let Pt=mt.update(T),Ft=T.material;Ft.visible&&R.push(T,Pt,Ft,tt,Me.z,null,G)}}else if(T.isMesh||T.isLine||T.isPoints){let Nt=G.isArrayCamera?Re:ne;if(!T.frustumCulled||T.intersectsFrustum(Nt)){let Pt=mt.update(T),Ft=T.material;if(Z&&(T.boundingSphere!==void 0?(T.boundingSphere===null&&T.computeBoundingSphere(),Me.copy(T.boundingSphere.center)):(Pt.boundingSphere===null&&Pt.computeBoundingSphere(),Me.copy(Pt.boundingSphere.center)),Me.applyMatrix4(T.matrixWorld).applyMatrix4(Ue)),Array.isArray(Ft)){let Wt=Pt.groups;for(let ie=0,me=Wt.length;ie<me;ie++){let Ht=Wt[ie],ge=Ft[Ht.materialIndex];ge&&ge.visible&&R.push(T,Pt,ge,tt,Me.z,Ht,G)}}else Ft.visible&&R.push(T,Pt,Ft,tt,Me.z,null,G)}}}let Ct=T.children;for(let Nt=0,Pt=Ct.length;Nt<Pt;Nt++)ts(Ct[Nt],G,tt,Z)}function Eo(T,G,tt,Z){let{opaque:j,transmissive:Ct,transparent:Nt}=T;w.setupLightsView(tt),Ce===!0&&ot.setGlobalState(F.clippingPlanes,tt),Z&&At.viewport(et.copy(Z)),j.length>0&&je(j,G,tt),Ct.length>0&&je(Ct,G,tt),Nt.length>0&&je(Nt,G,tt),At.buffers.depth.setTest(!0),At.buffers.depth.setMask(!0),At.buffers.color.setMask(!0),At.setPolygonOffset(!1)}function Mi(T,G,tt,Z){if((tt.isScene===!0?tt.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[Z.id]===void 0){let Ht=jt.has("EXT_color_buffer_half_float")||jt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[Z.id]=new fi(1,1,{generateMipmaps:!0,type:Ht?Oi:ti,minFilter:ys,samples:Math.max(4,ce.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:be.workingColorSpace})}let Ct=w.state.transmissionRenderTarget[Z.id],Nt=Z.viewport||et;Ct.setSize(Nt.z*F.transmissionResolutionScale,Nt.w*F.transmissionResolutionScale);let Pt=F.getRenderTarget(),Ft=F.getActiveCubeFace(),Wt=F.getActiveMipmapLevel();F.setRenderTarget(Ct),F.getClearColor(K),dt=F.getClearAlpha(),dt<1&&F.setClearColor(16777215,.5),F.clear(),Je&&k.render(tt);let ie=F.toneMapping;F.toneMapping=Ji;let me=Z.viewport;if(Z.viewport!==void 0&&(Z.viewport=void 0),w.setupLightsView(Z),Ce===!0&&ot.setGlobalState(F.clippingPlanes,Z),je(T,tt,Z),Zt.updateMultisampleRenderTarget(Ct),Zt.updateRenderTargetMipmap(Ct),jt.has("WEBGL_multisampled_render_to_texture")===!1){let Ht=!1;for(let ge=0,Ze=G.length;ge<Ze;ge++){let Le=G[ge],{object:De,geometry:gn,material:zt,group:ln}=Le;if(zt.side===jn&&De.layers.test(Z.layers)){let ye=zt.side;zt.side=Nn,zt.needsUpdate=!0,nn(De,tt,Z,gn,zt,ln),zt.side=ye,zt.needsUpdate=!0,Ht=!0}}Ht===!0&&(Zt.updateMultisampleRenderTarget(Ct),Zt.updateRenderTargetMipmap(Ct))}F.setRenderTarget(Pt,Ft,Wt),F.setClearColor(K,dt),me!==void 0&&(Z.viewport=me),F.toneMapping=ie}function je(T,G,tt){let Z=G.isScene===!0?G.overrideMaterial:null;for(let j=0,Ct=T.length;j<Ct;j++){let Nt=T[j],{object:Pt,geometry:Ft,group:Wt}=Nt,ie=Nt.material;ie.allowOverride===!0&&Z!==null&&(ie=Z),Pt.layers.test(tt.layers)&&nn(Pt,G,tt,Ft,ie,Wt)}}function nn(T,G,tt,Z,j,Ct){L!==null&&j.isNodeMaterial&&L.setObject(T,j),T.onBeforeRender(F,G,tt,Z,j,Ct),T.modelViewMatrix.multiplyMatrices(tt.matrixWorldInverse,T.matrixWorld),T.normalMatrix.getNormalMatrix(T.modelViewMatrix),j.onBeforeRender(F,G,tt,Z,T,Ct),j.transparent===!0&&j.side===jn&&j.forceSinglePass===!1?(j.side=Nn,j.needsUpdate=!0,F.renderBufferDirect(tt,G,Z,j,T,Ct),j.side=Ni,j.needsUpdate=!0,F.renderBufferDirect(tt,G,Z,j,T,Ct),j.side=jn):F.renderBufferDirect(tt,G,Z,j,T,Ct),T.onAfterRender(F,G,tt,Z,j,Ct)}function sn(T){let G=0;for(let tt of T)tt.texture!==null&&G++;return G}function zi(T,G,tt){G.isScene!==!0&&(G=mn);let Z=Xt.get(T),j=w.state.lights,Ct=w.state.shadowsArray,Nt=j.state.version,Pt=ct.getParameters(T,j.state,Ct,G,tt,w.state.lightProbeGridArray),Ft=ct.getProgramCacheKey(Pt),Wt=Z.programs;Z.environment=T.isMeshStandardMaterial||T.isMeshLambertMaterial||T.isMeshPhongMaterial?G.environment:null,Z.fog=G.fog;let ie=T.isMeshStandardMaterial||T.isMeshLambertMaterial&&!T.envMap||T.isMeshPhongMaterial&&!T.envMap;Z.envMap=I.get(T.envMap||Z.environment,ie),Z.envMapRotation=Z.environment!==null&&T.envMap===null?G.environmentRotation:T.envMapRotation,Wt===void 0&&(T.addEventListener("dispose",ue),Wt=new Map,Z.programs=Wt,Z.programVariants=new Map);let me=Wt.get(Ft);if(me!==void 0){if(Z.currentProgram===me&&Z.lightsStateVersion===Nt)return To(T,Pt),me}else Pt.uniforms=ct.getUniforms(T),L!==null&&T.isNodeMaterial&&L.build(T,tt,Pt),T.onBeforeCompile(Pt,F),me=ct.acquireProgram(Pt,Ft),Wt.set(Ft,me),Z.uniforms=Pt.uniforms;let Ht=Z.uniforms;return(!T.isShaderMaterial&&!T.isRawShaderMaterial||T.clipping===!0)&&(Ht.clippingPlanes=ot.uniform),To(T,Pt),Z.needsLights=Ss(T),Z.lightsStateVersion=Nt,Z.needsLights&&(Ht.ambientLightColor.value=j.state.ambient,Ht.lightProbe.value=j.state.probe,Ht.sunLights.value=j.state.sun,Ht.sunLightShadows.value=j.state.sunShadow,Ht.directionalLights.value=j.state.directional,Ht.directionalLightShadows.value=j.state.directionalShadow,Ht.spotLights.value=j.state.spot,Ht.spotLightShadows.value=j.state.spotShadow,Ht.rectAreaLights.value=j.state.rectArea,Ht.ltc_1.value=j.state.rectAreaLTC1,Ht.ltc_2.value=j.state.rectAreaLTC2,Ht.pointLights.value=j.state.point,Ht.pointLightShadows.value=j.state.pointShadow,Ht.hemisphereLights.value=j.state.hemi,Ht.sunShadowMatrix.value=j.state.sunShadowMatrix,Ht.sunShadowCascade.value=j.state.sunShadowCascade,Ht.directionalShadowMatrix.value=j.state.directionalShadowMatrix,Ht.spotLightMatrix.value=j.state.spotLightMatrix,Ht.spotLightMap.value=j.state.spotLightMap,Ht.pointShadowMatrix.value=j.state.pointShadowMatrix),Z.numLightProbeGrids=sn(w.state.lightProbeGridArray),Z.currentProgram=me,Z.uniformsList=null,me}function ni(T,G,tt,Z,j){let Ct=Xt.get(T),Nt=Ct.currentProgram.id+","+Z+","+j,Pt=Ct.programVariants.get(Nt);return Pt===void 0?(Pt=zi(T,G,tt),Ct.programVariants.set(Nt,Pt)):(Ct.currentProgram=Pt,Ct.uniformsList=null,Ct.outputColorSpace=Z,Ct.toneMapping=j),Pt}function Ms(T){if(T.uniformsList===null){let G=T.currentProgram.getUniforms();T.uniformsList=Mo.seqWithValue(G.seq,T.uniforms)}return T.uniformsList}function To(T,G){let tt=Xt.get(T);tt.outputColorSpace=G.outputColorSpace,tt.batching=G.batching,tt.batchingColor=G.batchingColor,tt.instancing=G.instancing,tt.instancingColor=G.instancingColor,tt.instancingMorph=G.instancingMorph,tt.skinning=G.skinning,tt.morphTargets=G.morphTargets,tt.morphNormals=G.morphNormals,tt.morphColors=G.morphColors,tt.morphTargetsCount=G.morphTargetsCount,tt.numClippingPlanes=G.numClippingPlanes,tt.numIntersection=G.numClipIntersection,tt.vertexAlphas=G.vertexAlphas,tt.vertexTangents=G.vertexTangents,tt.toneMapping=G.toneMapping}function Ao(T,G,tt,Z,j){G.isScene!==!0&&(G=mn),Zt.resetTextureUnits();let Ct=G.fog,Nt=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial?G.environment:null,Pt=st===null?F.outputColorSpace:st.isXRRenderTarget===!0?st.texture.colorSpace:be.workingColorSpace,Ft=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial&&!Z.envMap||Z.isMeshPhongMaterial&&!Z.envMap,Wt=I.get(Z.envMap||Nt,Ft),ie=Z.vertexColors===!0&&!!tt.attributes.color&&tt.attributes.color.itemSize===4,me=!!tt.attributes.tangent&&(!!Z.normalMap||Z.anisotropy>0),Ht=!!tt.morphAttributes.position,ge=!!tt.morphAttributes.normal,Ze=!!tt.morphAttributes.color,Le=Ji;Z.toneMapped&&(st===null||st.isXRRenderTarget===!0)&&(Le=F.toneMapping);let De=tt.morphAttributes.position||tt.morphAttributes.normal||tt.morphAttributes.color,gn=De!==void 0?De.length:0,zt=Xt.get(Z),ln=w.state.lights;if(Ce===!0&&(on===!0||T!==J)){let Ne=T===J&&Z.id===X;ot.setState(Z,T,Ne)}let ye=!1,es=!1;Z.version===zt.__version?zt.needsLights&&zt.lightsStateVersion!==ln.state.version||j.isBatchedMesh&&zt.batching===!1||!j.isBatchedMesh&&zt.batching===!0||j.isBatchedMesh&&zt.batchingColor===!0&&j._colorsTexture===null||j.isBatchedMesh&&zt.batchingColor===!1&&j._colorsTexture!==null||j.isInstancedMesh&&zt.instancing===!1||!j.isInstancedMesh&&zt.instancing===!0||j.isSkinnedMesh&&zt.skinning===!1||!j.isSkinnedMesh&&zt.skinning===!0||j.isInstancedMesh&&zt.instancingColor===!0&&j.instanceColor===null||j.isInstancedMesh&&zt.instancingColor===!1&&j.instanceColor!==null||j.isInstancedMesh&&zt.instancingMorph===!0&&j.morphTexture===null||j.isInstancedMesh&&zt.instancingMorph===!1&&j.morphTexture!==null||zt.envMap!==Wt||Z.fog===!0&&zt.fog!==Ct||zt.numClippingPlanes!==void 0&&(zt.numClippingPlanes!==ot.numPlanes||zt.numIntersection!==ot.numIntersection)||zt.vertexAlphas!==ie||zt.vertexTangents!==me||zt.morphTargets!==Ht||zt.morphNormals!==ge||zt.morphColors!==Ze||zt.morphTargetsCount!==gn||zt.numLightProbeGrids!==sn(w.state.lightProbeGridArray)?ye=!0:(zt.outputColorSpace!==Pt||zt.toneMapping!==Le)&&(es=!0):(ye=!0,zt.__version=Z.version);let cn=zt.currentProgram;(ye===!0||es===!0)&&(cn=es===!0?ni(Z,G,j,Pt,Le):zi(Z,G,j),L&&Z.isNodeMaterial&&L.onUpdateProgram(Z,cn,zt));let wr=!1,Vi=!1,ns=!1,de=cn.getUniforms(),Ke=zt.uniforms;if(At.useProgram(cn.program)&&(wr=!0,Vi=!0,ns=!0),Z.id!==X&&(X=Z.id,Vi=!0),wr||J!==T){At.buffers.depth.getReversed()&&T.reversedDepth!==!0&&(T._reversedDepth=!0,T.updateProjectionMatrix()),de.setValue(V,"projectionMatrix",T.projectionMatrix),de.setValue(V,"viewMatrix",T.matrixWorldInverse);let hn=de.map.cameraPosition;hn!==void 0&&hn.setValue(V,Mn.setFromMatrixPosition(T.matrixWorld)),ce.logarithmicDepthBuffer&&de.setValue(V,"logDepthBufFC",2/(Math.log(T.far+1)/Math.LN2)),(Z.isMeshPhongMaterial||Z.isMeshToonMaterial||Z.isMeshLambertMaterial||Z.isMeshBasicMaterial||Z.isMeshStandardMaterial||Z.isShaderMaterial)&&de.setValue(V,"isOrthographic",T.isOrthographicCamera===!0),J!==T&&(J=T,Vi=!0,ns=!0)}if(zt.needsLights&&(ln.state.sunShadowMap.length>0&&de.setValue(V,"sunShadowMap",ln.state.sunShadowMap,Zt),ln.state.directionalShadowMap.length>0&&de.setValue(V,"directionalShadowMap",ln.state.directionalShadowMap,Zt),ln.state.spotShadowMap.length>0&&de.setValue(V,"spotShadowMap",ln.state.spotShadowMap,Zt),ln.state.pointShadowMap.length>0&&de.setValue(V,"pointShadowMap",ln.state.pointShadowMap,Zt)),j.isSkinnedMesh){de.setOptional(V,j,"bindMatrix"),de.setOptional(V,j,"bindMatrixInverse");let Ne=j.skeleton;Ne&&(Ne.boneTexture===null&&Ne.computeBoneTexture(),de.setValue(V,"boneTexture",Ne.boneTexture,Zt))}j.isBatchedMesh&&(de.setOptional(V,j,"batchingTexture"),de.setValue(V,"batchingTexture",j._matricesTexture,Zt),de.setOptional(V,j,"batchingIdTexture"),de.setValue(V,"batchingIdTexture",j._indirectTexture,Zt),de.setOptional(V,j,"batchingColorTexture"),j._colorsTexture!==null&&de.setValue(V,"batchingColorTexture",j._colorsTexture,Zt));let Hn=tt.morphAttributes;if((Hn.position!==void 0||Hn.normal!==void 0||Hn.color!==void 0)&&at.update(j,tt,cn),(Vi||zt.receiveShadow!==j.receiveShadow)&&(zt.receiveShadow=j.receiveShadow,de.setValue(V,"receiveShadow",j.receiveShadow)),(Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial)&&Z.envMap===null&&G.environment!==null&&(Ke.envMapIntensity.value=G.environmentIntensity),Ke.dfgLUT!==void 0&&(Ke.dfgLUT.value=Nw()),Vi){if(de.setValue(V,"toneMappingExposure",F.toneMappingExposure),zt.needsLights&&Mr(Ke,ns),Ct&&Z.fog===!0&&St.refreshFogUniforms(Ke,Ct),St.refreshMaterialUniforms(Ke,Z,xt,_t,w.state.transmissionRenderTarget[T.id]),zt.needsLights&&zt.numLightProbeGrids>0){let Ne=b,hn=0;for(let Un of w.state.lightProbeGridArray)Un.texture!==null&&(Ne.textures[hn]=Un.texture,Ne.min[hn]=Un.boundingBox.min,Ne.max[hn]=Un.boundingBox.max,Ne.resolution[hn]=Un.resolution,hn++);for(let Un in Ne)Ne[Un].length=hn;Ke.probesSH.value=Ne.textures,Ke.probesMin.value=Ne.min,Ke.probesMax.value=Ne.max,Ke.probesResolution.value=Ne.resolution}Mo.upload(V,Ms(zt),Ke,Zt)}if(Z.isShaderMaterial&&Z.uniformsNeedUpdate===!0&&(Mo.upload(V,Ms(zt),Ke,Zt),Z.uniformsNeedUpdate=!1),Z.isSpriteMaterial&&de.setValue(V,"center",j.center),de.setValue(V,"modelViewMatrix",j.modelViewMatrix),de.setValue(V,"normalMatrix",j.normalMatrix),de.setValue(V,"modelMatrix",j.matrixWorld),Z.uniformsGroups!==void 0){let Ne=Z.uniformsGroups;for(let hn=0,Un=Ne.length;hn<Un;hn++){let ka=Ne[hn];$t.update(ka,cn),$t.bind(ka,cn)}}return cn}function Mr(T,G){T.ambientLightColor.needsUpdate=G,T.lightProbe.needsUpdate=G,T.sunLights.needsUpdate=G,T.sunLightShadows.needsUpdate=G,T.directionalLights.needsUpdate=G,T.directionalLightShadows.needsUpdate=G,T.pointLights.needsUpdate=G,T.pointLightShadows.needsUpdate=G,T.spotLights.needsUpdate=G,T.spotLightShadows.needsUpdate=G,T.rectAreaLights.needsUpdate=G,T.hemisphereLights.needsUpdate=G}function Ss(T){return T.isMeshLambertMaterial||T.isMeshToonMaterial||T.isMeshPhongMaterial||T.isMeshStandardMaterial||T.isShadowMaterial||T.isShaderMaterial&&T.lights===!0}this.getActiveCubeFace=function(){return H},this.getActiveMipmapLevel=function(){return B},this.getRenderTarget=function(){return st},this.setRenderTargetTextures=function(T,G,tt){let Z=Xt.get(T);Z.__autoAllocateDepthBuffer=T.resolveDepthBuffer===!1,Z.__autoAllocateDepthBuffer===!1&&(Z.__useRenderToTexture=!1),Xt.get(T.texture).__webglTexture=G,Xt.get(T.depthTexture).__webglTexture=Z.__autoAllocateDepthBuffer?void 0:tt,Z.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(T,G){let tt=Xt.get(T);tt.__webglFramebuffer=G,tt.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(T,G=0,tt=0){st=T,H=G,B=tt;let Z=null,j=!1,Ct=!1;if(T){let Pt=Xt.get(T);if(Pt.__useDefaultFramebuffer!==void 0){At.bindFramebuffer(V.FRAMEBUFFER,Pt.__webglFramebuffer),et.copy(T.viewport),ft.copy(T.scissor),lt=T.scissorTest,At.viewport(et),At.scissor(ft),At.setScissorTest(lt),X=-1;return}else if(Pt.__webglFramebuffer===void 0)Zt.setupRenderTarget(T);else if(Pt.__hasExternalTextures)Zt.rebindTextures(T,Xt.get(T.texture).__webglTexture,Xt.get(T.depthTexture).__webglTexture);else if(T.depthBuffer){let ie=T.depthTexture;if(Pt.__boundDepthTexture!==ie){if(ie!==null&&Xt.has(ie)&&(T.width!==ie.image.width||T.height!==ie.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Zt.setupDepthRenderbuffer(T)}}let Ft=T.texture;(Ft.isData3DTexture||Ft.isDataArrayTexture||Ft.isCompressedArrayTexture)&&(Ct=!0);let Wt=Xt.get(T).__webglFramebuffer;T.isWebGLCubeRenderTarget?(Array.isArray(Wt[G])?Z=Wt[G][tt]:Z=Wt[G],j=!0):T.samples>0&&Zt.useMultisampledRTT(T)===!1?Z=Xt.get(T).__webglMultisampledFramebuffer:Array.isArray(Wt)?Z=Wt[tt]:Z=Wt,et.copy(T.viewport),ft.copy(T.scissor),lt=T.scissorTest}else et.copy(Ut).multiplyScalar(xt).floor(),ft.copy(ee).multiplyScalar(xt).floor(),lt=he;if(tt!==0&&(Z=U),At.bindFramebuffer(V.FRAMEBUFFER,Z)&&At.drawBuffers(T,Z),At.viewport(et),At.scissor(ft),At.setScissorTest(lt),j){let Pt=Xt.get(T.texture);V.framebufferTexture2D(V.FRAMEBUFFER,V.COLOR_ATTACHMENT0,V.TEXTURE_CUBE_MAP_POSITIVE_X+G,Pt.__webglTexture,tt)}else if(Ct){let Pt=G;for(let Ft=0;Ft<T.textures.length;Ft++){let Wt=Xt.get(T.textures[Ft]);V.framebufferTextureLayer(V.FRAMEBUFFER,V.COLOR_ATTACHMENT0+Ft,Wt.__webglTexture,tt,Pt)}}else if(T!==null&&tt!==0){let Pt=Xt.get(T.texture);V.framebufferTexture2D(V.FRAMEBUFFER,V.COLOR_ATTACHMENT0,V.TEXTURE_2D,Pt.__webglTexture,tt)}X=-1};function Sr(T){let G=Xt.get(T);return(G.__readFormat!==T.format||G.__readType!==T.type)&&(G.__readFormat=T.format,G.__readType=T.type,G.__formatReadable=ce.textureFormatReadable(T.format),G.__typeReadable=ce.textureTypeReadable(T.type)),G}this.readRenderTargetPixels=function(T,G,tt,Z,j,Ct,Nt,Pt=0){if(!(T&&T.isWebGLRenderTarget)){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Ft=Xt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&Nt!==void 0&&(Ft=Ft[Nt],Array.isArray(Ft)&&(Ft=Ft[0])),Ft){At.bindFramebuffer(V.FRAMEBUFFER,Ft);try{let Wt=T.textures[Pt],ie=Wt.format,me=Wt.type;T.textures.length>1&&V.readBuffer(V.COLOR_ATTACHMENT0+Pt);let Ht=Sr(Wt);if(Ht.__formatReadable===!1){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Ht.__typeReadable===!1){se("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=T.width-Z&&tt>=0&&tt<=T.height-j&&V.readPixels(G,tt,Z,j,Mt.convert(ie),Mt.convert(me),Ct)}finally{let Wt=st!==null?Xt.get(st).__webglFramebuffer:null;At.bindFramebuffer(V.FRAMEBUFFER,Wt)}}},this.readRenderTargetPixelsAsync=async function(T,G,tt,Z,j,Ct,Nt,Pt=0){if(!(T&&T.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Ft=Xt.get(T).__webglFramebuffer;if(T.isWebGLCubeRenderTarget&&Nt!==void 0&&(Ft=Ft[Nt],Array.isArray(Ft)&&(Ft=Ft[0])),Ft)if(G>=0&&G<=T.width-Z&&tt>=0&&tt<=T.height-j){At.bindFramebuffer(V.FRAMEBUFFER,Ft);let Wt=T.textures[Pt],ie=Wt.format,me=Wt.type;T.textures.length>1&&V.readBuffer(V.COLOR_ATTACHMENT0+Pt);let Ht=Sr(Wt);if(Ht.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Ht.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ge=V.createBuffer();V.bindBuffer(V.PIXEL_PACK_BUFFER,ge),V.bufferData(V.PIXEL_PACK_BUFFER,Ct.byteLength,V.STREAM_READ),V.readPixels(G,tt,Z,j,Mt.convert(ie),Mt.convert(me),0),V.bindBuffer(V.PIXEL_PACK_BUFFER,null);let Ze=st!==null?Xt.get(st).__webglFramebuffer:null;At.bindFramebuffer(V.FRAMEBUFFER,Ze);let Le=V.fenceSync(V.SYNC_GPU_COMMANDS_COMPLETE,0);return V.flush(),await xg(V,Le,4),V.bindBuffer(V.PIXEL_PACK_BUFFER,ge),V.getBufferSubData(V.PIXEL_PACK_BUFFER,0,Ct),V.bindBuffer(V.PIXEL_PACK_BUFFER,null),V.deleteBuffer(ge),V.deleteSync(Le),Ct}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(T,G=null,tt=0){let Z=Math.pow(2,-tt),j=Math.floor(T.image.width*Z),Ct=Math.floor(T.image.height*Z),Nt=G!==null?G.x:0,Pt=G!==null?G.y:0;Zt.setTexture2D(T,0),V.copyTexSubImage2D(V.TEXTURE_2D,tt,0,0,Nt,Pt,j,Ct),At.unbindTexture()},this.copyTextureToTexture=function(T,G,tt=null,Z=null,j=0,Ct=0){let Nt,Pt,Ft,Wt,ie,me,Ht,ge,Ze,Le=T.isCompressedTexture?T.mipmaps[Ct]:T.image;if(tt!==null)Nt=tt.max.x-tt.min.x,Pt=tt.max.y-tt.min.y,Ft=tt.isBox3?tt.max.z-tt.min.z:1,Wt=tt.min.x,ie=tt.min.y,me=tt.isBox3?tt.min.z:0;else{let de=Math.pow(2,-j);Nt=Math.floor(Le.width*de),Pt=Math.floor(Le.height*de),T.isDataArrayTexture?Ft=Le.depth:T.isData3DTexture?Ft=Math.floor(Le.depth*de):Ft=1,Wt=0,ie=0,me=0}Z!==null?(Ht=Z.x,ge=Z.y,Ze=Z.z):(Ht=0,ge=0,Ze=0);let De=Mt.convert(G.format),gn=Mt.convert(G.type),zt;G.isData3DTexture?(Zt.setTexture3D(G,0),zt=V.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(Zt.setTexture2DArray(G,0),zt=V.TEXTURE_2D_ARRAY):(Zt.setTexture2D(G,0),zt=V.TEXTURE_2D),At.activeTexture(V.TEXTURE0),At.pixelStorei(V.UNPACK_FLIP_Y_WEBGL,G.flipY),At.pixelStorei(V.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),At.pixelStorei(V.UNPACK_ALIGNMENT,G.unpackAlignment);let ln=At.getParameter(V.UNPACK_ROW_LENGTH),ye=At.getParameter(V.UNPACK_IMAGE_HEIGHT),es=At.getParameter(V.UNPACK_SKIP_PIXELS),cn=At.getParameter(V.UNPACK_SKIP_ROWS),wr=At.getParameter(V.UNPACK_SKIP_IMAGES);At.pixelStorei(V.UNPACK_ROW_LENGTH,Le.width),At.pixelStorei(V.UNPACK_IMAGE_HEIGHT,Le.height),At.pixelStorei(V.UNPACK_SKIP_PIXELS,Wt),At.pixelStorei(V.UNPACK_SKIP_ROWS,ie),At.pixelStorei(V.UNPACK_SKIP_IMAGES,me);let Vi=T.isDataArrayTexture||T.isData3DTexture,ns=G.isDataArrayTexture||G.isData3DTexture;if(T.isDepthTexture){let de=Xt.get(T),Ke=Xt.get(G),Hn=Xt.get(de.__renderTarget),Ne=Xt.get(Ke.__renderTarget);At.bindFramebuffer(V.READ_FRAMEBUFFER,Hn.__webglFramebuffer),At.bindFramebuffer(V.DRAW_FRAMEBUFFER,Ne.__webglFramebuffer);for(let hn=0;hn<Ft;hn++)Vi&&(V.framebufferTextureLayer(V.READ_FRAMEBUFFER,V.COLOR_ATTACHMENT0,Xt.get(T).__webglTexture,j,me+hn),V.framebufferTextureLayer(V.DRAW_FRAMEBUFFER,V.COLOR_ATTACHMENT0,Xt.get(G).__webglTexture,Ct,Ze+hn)),V.blitFramebuffer(Wt,ie,Wt+Nt,ie+Pt,Ht,ge,Ht+Nt,ge+Pt,V.DEPTH_BUFFER_BIT,V.NEAREST);At.bindFramebuffer(V.READ_FRAMEBUFFER,null),At.bindFramebuffer(V.DRAW_FRAMEBUFFER,null)}else if(j!==0||T.isRenderTargetTexture||Xt.has(T)){let de=Xt.get(T),Ke=Xt.get(G);At.bindFramebuffer(V.READ_FRAMEBUFFER,C),At.bindFramebuffer(V.DRAW_FRAMEBUFFER,O);for(let Hn=0;Hn<Ft;Hn++)Vi?V.framebufferTextureLayer(V.READ_FRAMEBUFFER,V.COLOR_ATTACHMENT0,de.__webglTexture,j,me+Hn):V.framebufferTexture2D(V.READ_FRAMEBUFFER,V.COLOR_ATTACHMENT0,V.TEXTURE_2D,de.__webglTexture,j),ns?V.framebufferTextureLayer(V.DRAW_FRAMEBUFFER,V.COLOR_ATTACHMENT0,Ke.__webglTexture,Ct,Ze+Hn):V.framebufferTexture2D(V.DRAW_FRAMEBUFFER,V.COLOR_ATTACHMENT0,V.TEXTURE_2D,Ke.__webglTexture,Ct),j!==0?V.blitFramebuffer(Wt,ie,Wt+Nt,ie+Pt,Ht,ge,Ht+Nt,ge+Pt,V.COLOR_BUFFER_BIT,V.NEAREST):ns?V.copyTexSubImage3D(zt,Ct,Ht,ge,Ze+Hn,Wt,ie,Nt,Pt):V.copyTexSubImage2D(zt,Ct,Ht,ge,Wt,ie,Nt,Pt);At.bindFramebuffer(V.READ_FRAMEBUFFER,null),At.bindFramebuffer(V.DRAW_FRAMEBUFFER,null)}else ns?T.isDataTexture||T.isData3DTexture?V.texSubImage3D(zt,Ct,Ht,ge,Ze,Nt,Pt,Ft,De,gn,Le.data):G.isCompressedArrayTexture?V.compressedTexSubImage3D(zt,Ct,Ht,ge,Ze,Nt,Pt,Ft,De,Le.data):V.texSubImage3D(zt,Ct,Ht,ge,Ze,Nt,Pt,Ft,De,gn,Le):T.isDataTexture?V.texSubImage2D(V.TEXTURE_2D,Ct,Ht,ge,Nt,Pt,De,gn,Le.data):T.isCompressedTexture?V.compressedTexSubImage2D(V.TEXTURE_2D,Ct,Ht,ge,Le.width,Le.height,De,Le.data):V.texSubImage2D(V.TEXTURE_2D,Ct,Ht,ge,Nt,Pt,De,gn,Le);At.pixelStorei(V.UNPACK_ROW_LENGTH,ln),At.pixelStorei(V.UNPACK_IMAGE_HEIGHT,ye),At.pixelStorei(V.UNPACK_SKIP_PIXELS,es),At.pixelStorei(V.UNPACK_SKIP_ROWS,cn),At.pixelStorei(V.UNPACK_SKIP_IMAGES,wr),Ct===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&V.generateMipmap(zt),At.unbindTexture()},this.initRenderTarget=function(T){Xt.get(T).__webglFramebuffer===void 0&&Zt.setupRenderTarget(T)},this.initTexture=function(T){T.isCubeTexture?Zt.setTextureCube(T,0):T.isData3DTexture?Zt.setTexture3D(T,0):T.isDataArrayTexture||T.isCompressedArrayTexture?Zt.setTexture2DArray(T,0):Zt.setTexture2D(T,0),At.unbindTexture()},this.resetState=function(){H=0,B=0,st=null,At.reset(),Tt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return bi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=be._getDrawingBufferColorSpace(t),e.unpackColorSpace=be._getUnpackColorSpace()}};var s0={type:"change"},Bd={type:"start"},o0={type:"end"},uh=new dr,r0=new Yn,Uw=Math.cos(70*Md.DEG2RAD),bn=new $,ei=2*Math.PI,Ae={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Od=1e-6,dh=class extends ba{constructor(t,e=null){super(t,e),this.state=Ae.NONE,this.target=new $,this.cursor=new $,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Xs.ROTATE,MIDDLE:Xs.DOLLY,RIGHT:Xs.PAN},this.touches={ONE:$s.ROTATE,TWO:$s.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new $,this._lastQuaternion=new di,this._lastTargetPosition=new $,this._quat=new di().setFromUnitVectors(t.up,new $(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new go,this._sphericalDelta=new go,this._scale=1,this._panOffset=new $,this._rotateStart=new re,this._rotateEnd=new re,this._rotateDelta=new re,this._panStart=new re,this._panEnd=new re,this._panDelta=new re,this._dollyStart=new re,this._dollyEnd=new re,this._dollyDelta=new re,this._dollyDirection=new $,this._mouse=new re,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=Ow.bind(this),this._onPointerDown=Fw.bind(this),this._onPointerUp=Bw.bind(this),this._onContextMenu=Xw.bind(this),this._onMouseWheel=Vw.bind(this),this._onKeyDown=Gw.bind(this),this._onTouchStart=Hw.bind(this),this._onTouchMove=Ww.bind(this),this._onMouseDown=kw.bind(this),this._onMouseMove=zw.bind(this),this._interceptControlDown=$w.bind(this),this._interceptControlUp=qw.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Ae.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(s0),this.update(),this.state=Ae.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;bn.copy(e).sub(this.target),bn.applyQuaternion(this._quat),this._spherical.setFromVector3(bn),this.autoRotate&&this.state===Ae.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=ei:n>Math.PI&&(n-=ei),s<-Math.PI?s+=ei:s>Math.PI&&(s-=ei),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(bn.setFromSpherical(this._spherical),bn.applyQuaternion(this._quatInverse),e.copy(this.target).add(bn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=bn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new $(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new $(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=bn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(uh.origin.copy(this.object.position),uh.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(uh.direction))<Uw?this.object.lookAt(this.target):(r0.setFromNormalAndCoplanarPoint(this.object.up,this.target),uh.intersectPlane(r0,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>Od||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Od||this._lastTargetPosition.distanceToSquared(this.target)>Od?(this.dispatchEvent(s0),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?ei/60*this.autoRotateSpeed*t:ei/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){bn.setFromMatrixColumn(e,0),bn.multiplyScalar(-t),this._panOffset.add(bn)}_panUp(t,e){this.screenSpacePanning===!0?bn.setFromMatrixColumn(e,1):(bn.setFromMatrixColumn(e,0),bn.crossVectors(this.object.up,bn)),bn.multiplyScalar(t),this._panOffset.add(bn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;bn.copy(s).sub(this.target);let r=bn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/e.clientHeight),this._rotateUp(ei*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/e.clientHeight),this._rotateUp(ei*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new re,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function Fw(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function Ow(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function Bw(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(o0),this.state=Ae.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function kw(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Xs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Ae.DOLLY;break;case Xs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}break;case Xs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Bd)}function zw(i){switch(this.state){case Ae.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Ae.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Ae.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function Vw(i){this.enabled===!1||this.enableZoom===!1||this.state!==Ae.NONE||(i.preventDefault(),this.dispatchEvent(Bd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(o0))}function Gw(i){this.enabled!==!1&&this._handleKeyDown(i)}function Hw(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case $s.ROTATE:if(this.enableRotate===!1){this.state=Ae.NONE;break}this._handleTouchStartRotate(i),this.state=Ae.TOUCH_ROTATE;break;case $s.PAN:if(this.enablePan===!1){this.state=Ae.NONE;break}this._handleTouchStartPan(i),this.state=Ae.TOUCH_PAN;break;default:this.state=Ae.NONE}break;case 2:switch(this.touches.TWO){case $s.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Ae.TOUCH_DOLLY_PAN;break;case $s.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Ae.TOUCH_DOLLY_ROTATE;break;default:this.state=Ae.NONE}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Bd)}function Ww(i){switch(this._trackPointer(i),this.state){case Ae.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Ae.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Ae.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Ae.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Ae.NONE}}function Xw(i){this.enabled!==!1&&i.preventDefault()}function $w(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function qw(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var kd=Math.PI/36,Yw=.06,a0=1.15,l0=.02;function c0(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,l=new $().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let c=new $().setFromMatrixColumn(t.matrix,1),u=l.multiplyScalar(o).addScaledVector(c,a).multiplyScalar(Yw*s.length());n.add(u)}else{s.applyAxisAngle(t.up,o*kd);let c=Math.min(Math.PI-l0,Math.max(l0,s.angleTo(t.up)-a*kd));s.applyAxisAngle(l.applyAxisAngle(t.up,o*kd),c-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?a0:1/a0);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function zd(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new $(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var jw=["quiet","within","near","broken","waived","near","within"],fh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new lh({antialias:!0,alpha:!0}),this.soft=Qw(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new dh(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(c0(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new ya(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new va(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new ra;camera=new Zn(32,1,.1,1e4);controls;parts=new Map;seam=new Li;marker=new Li;labels=[];labelLayer=qt("div",{class:"scene-labels"});cutPlane=new Yn(new $(1,0,0),0);centre=new $;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Li,s=t1(t),r=e==="cover",o=new le(rn(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new pa({color:o,side:r?jn:Ni,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),l=Kw(new le(rn(r?"cover-cut":"base-cut")),new le(rn("ink")),r?-1:1),c=new Pn(s,l);c.visible=!1,c.name="inside";let u=new Pn(s,a);u.renderOrder=r?2:0;let h=new fo(e1(t),new Vs({color:new le(rn("ink")),transparent:!0,opacity:r?.5:.4}));h.renderOrder=r?3:1,n.add(u,c,h),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new $(1/0,1/0,1/0),e=new $(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new $(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of Kn(n))t.min(new $(...s)),e.max(new $(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,en(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new $(...or(t.beam).toward);for(let r of t.contours){let o=Kn(r),a=(r.summary.rib_width?.median??1.5)*.36,l=new Uint8Array(o.length);for(let[c,u,h]of e.worst[r.id]??[])l.fill(h,c,u+1);this.seam.add(n1(o.map(c=>new $(...c)),r.stations.u.map(c=>new $(...c)),n,a,l,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(_=>_.id===r.contour);if(!o)continue;let a=new $(...Kn(o)[r.station]),l=new $(...o.stations.u[r.station]),c=s.find(_=>_.at.distanceTo(a)<this.radius/60);if(c){c.findings.push(r),c.numbers.textContent=Cs(c.findings),c.numbers.setAttribute("aria-label",`${c.numbers.textContent}: ${yt("go to these findings")}`);continue}let u=new le(rn(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),h=new zn().setFromPoints([a.clone().addScaledVector(l,-this.radius/22),a.clone().addScaledVector(l,this.radius/22)]),d=new fo(h,new Vs({color:u,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=qt("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: ${yt("go to {title}",{title:r.title})}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(l,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new $(...Kn(n)[t.station]),o=new $(...n.stations.u[t.station]),a=new $(...or(s.beam).toward),l=new $().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,l),this.cutPlane.setFromNormalAndCoplanarPoint(l.clone().negate(),r),e){let c=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(l,this.radius*.34);this.fly(c,r,a)}this.ask()}buildMarker(t,e,n,s){for(let h of[...this.marker.children])h0(h);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(h,d)=>t.clone().addScaledVector(e,h*r).addScaledVector(n,d*r),a=new le(rn("walker")),l=new ca(new zn().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Vs({color:a,depthTest:!1}));l.renderOrder=8;let c=new Pn(new fr(2*r,2*r),new _s({color:a,transparent:!0,opacity:this.cut?0:.12,side:jn,depthWrite:!1}));c.position.copy(t),c.up.copy(n),c.lookAt(t.clone().add(s)),c.renderOrder=7;let u=new Pn(new fa(r*.08,16,12),new _s({color:a,depthTest:!1}));u.position.copy(t),u.renderOrder=9,this.marker.add(l,c,u),this.host.dataset.marker=[t.x,t.y,t.z].map(h=>h.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),l=xf()||this.soft?0:550,c=performance.now(),u=h=>{if(s!==this.flight)return;let d=l?Math.min(1,(h-c)/l):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),zd(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(u)};u(c)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=or(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new $(...e.toward),this.distance());this.go(n,new $(...e.up),t)}aslant(t=!0){let e=or(this.walk.joint.beam),n=new $(...e.toward).multiplyScalar(.75).addScaledVector(new $(...e.right),.45).addScaledVector(new $(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new $(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),zd(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Pn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Ni:jn}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Pn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(h0),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function Kw(i,t,e){let n=new _s({color:i,side:Nn});return n.onBeforeCompile=s=>{s.uniforms.strokes={value:t},s.fragmentShader=`uniform vec3 strokes;
${s.fragmentShader}`.replace("#include <opaque_fragment>",`#include <opaque_fragment>
if (mod(gl_FragCoord.x + ${e.toFixed(1)} * gl_FragCoord.y, 9.0) < 1.4) gl_FragColor.rgb = mix(gl_FragColor.rgb, strokes, 0.62);`)},n.customProgramCacheKey=()=>`hatched${e}`,n}function Qw(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function h0(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function u0(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,l,c]=[r(3*o),r(3*o+1),r(3*o+2)],u=(Math.imul(a,73856093)^Math.imul(l,19349663)^Math.imul(c,83492791))&e-1;for(;;u=u+1&e-1){let h=n[u];if(h<0){n[u]=o,s[o]=o;break}if(r(3*h)===a&&r(3*h+1)===l&&r(3*h+2)===c){s[o]=h;break}}}return s}function t1(i){let{positions:t,triangles:e,face:n}=i,s=u0(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),l=[];for(let u=0;u<e.length;u++){let h=s[e[u]],d=(n[Math.floor(u/3)]+1)*r+h,f=o.get(d);f===void 0&&(f=l.length/3,o.set(d,f),l.push(t[3*h],t[3*h+1],t[3*h+2])),a[u]=f}let c=new zn;return c.setAttribute("position",new Bn(new Float32Array(l),3)),c.setIndex(new Bn(a,1)),c.computeVertexNormals(),c}function e1(i){let{positions:t,triangles:e,face:n}=i,s=u0(t),r=t.length/3,o=new Map;for(let c=0;c<e.length;c++){let[u,h]=[s[e[c]],s[e[c%3===2?c-2:c+1]]],d=u<h?u*r+h:h*r+u,f=n[Math.floor(c/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[c,u]of o){if(u===-2)continue;let h=Math.floor(c/r),d=c%r;a.push(t[3*h],t[3*h+1],t[3*h+2],t[3*d],t[3*d+1],t[3*d+2])}let l=new zn;return l.setAttribute("position",new Bn(new Float32Array(a),3)),l}function n1(i,t,e,n,s,r){let a=[],l=[],c=[],u=jw.map(g=>new le(rn(g)));i.forEach((g,_)=>{let p=s[_]===3||s[_]===4?1.5:s[_]===5?1.3:s[_]===2?1.1:.85,m=u[s[_]];for(let x=0;x<8;x++){let A=x/8*2*Math.PI,b=g.clone().addScaledVector(t[_],Math.cos(A)*n*p).addScaledVector(e,Math.sin(A)*n*p);a.push(b.x,b.y,b.z),l.push(m.r,m.g,m.b)}});let h=r?i.length:i.length-1;for(let g=0;g<h;g++){let _=(g+1)%i.length;for(let p=0;p<8;p++){let m=(p+1)%8;c.push(g*8+p,_*8+p,_*8+m,g*8+p,_*8+m,g*8+m)}}let d=new zn;d.setAttribute("position",new Bn(new Float32Array(a),3)),d.setAttribute("color",new Bn(new Float32Array(l),3)),d.setIndex(c);let f=new Pn(d,new _s({vertexColors:!0,side:jn}));return f.renderOrder=4,f}function p0(i,t,e,n){let s=(m,x)=>t.summary[m]?.max??x,r=s("rib_width",1.5),o=Math.min(s("rib_height",1.2),4),a=s("cover_thickness_max",2),l=Math.max(r/2+2.2,r*1.9),c=Gd(t),u=Math.max(l,Math.min(r/2+e+s("clamp_land",2)+.7,r/2+6)),h=c&&n?.edgeOfCover(c)||0,d=h>0&&h+.4<=u+3?Math.max(u,h+.4):u,f=a+Math.max(0,Math.min(s("gap",0),1))+.35,g=Math.max(...(n?.slopes??[0]).map(Math.abs));f+=Math.min(g,1)*l*.5;for(let m of n?.shade??[])m.v!==null&&m.v<a+5&&(f=Math.max(f,m.v+1.2));let _=Math.min(g,1)*l*.5,p={left:c>0?-l:-d,right:c<0?l:d};return i.rib_on==="cover"?{...p,bottom:-Math.max(1.6,o)-_,top:Math.max(f,o+1.2)}:{...p,bottom:-(o+1.4)-_,top:f}}var Gd=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0;function Hd(i,t,e,n,s=7){let r=[...i].sort((a,l)=>a.wanted-l.wanted),o=f0(r,t,e,s);for(let a=0,l=d0(r,o,n);l>0&&a<r.length;a++){let c=!1;for(let u=0;u<r.length;u++)for(let h=u+1;h<r.length;h++){let d=[...r];[d[u],d[h]]=[d[h],d[u]];let f=f0(d,t,e,s),g=d0(d,f,n);g>=l||(r.splice(0,r.length,...d),[o,l,c]=[f,g,!0])}if(!c)break}r.forEach((a,l)=>a.put(o[l]))}function d0(i,t,e){let n=i.flatMap((r,o)=>r.end?[[[e,t[o]+8],r.end]]:[]),s=0;return n.forEach((r,o)=>n.slice(o+1).forEach(a=>{i1(r,a)&&s++})),s}function i1([i,t],[e,n]){let s=(r,o,a)=>Math.sign((o[0]-r[0])*(a[1]-r[1])-(o[1]-r[1])*(a[0]-r[0]));return s(i,t,e)*s(i,t,n)<0&&s(e,n,i)*s(e,n,t)<0}function f0(i,t,e,n){let s=[],r=t;for(let a of i){let l=Math.max(r,a.wanted-a.height/2);s.push(l),r=l+a.height+n}let o=e;for(let a=i.length-1;a>=0;a--)s[a]=Math.min(s[a],o-i[a].height),o=s[a]-n;return s}var ph=null;function yr(i,t=12,e=500){return ph??=document.createElement("canvas").getContext("2d"),ph?(ph.font=`${e} ${t}px "Barlow Semi Condensed", "Arial Narrow", sans-serif`,ph.measureText(i).width):i.length*t*.47}function Ys(i,t,e=6,n=12,s=500){let r=l=>yr(l,n,s)<=t,o=[];for(let l of i.split(/ +/)){let c=o[o.length-1];c!==void 0&&r(`${c} ${l}`)?o[o.length-1]=`${c} ${l}`:o.push(l)}let a=(l,c)=>{if(!c&&r(l))return l;let u=l;for(;u.length>1&&!r(`${u}…`);)u=u.slice(0,-1);return`${u}…`};return o.slice(0,e).map((l,c)=>a(l,c===e-1&&o.length>e))}var pn=i=>i.waived?"waived":i.severity;function m0(i,t){let e=i.limit?` (${i.limit})`:"";return`${Dr[i.severity]} ${i.n}  ${i.title}${t&&t!=="–"?`: ${t}`:""}${e}`}function g0(i,t,e,n,s){let r=t+30+n*22<s.right?1:-1,o=t+r*(20+n*22),a=Math.max(s.top+10,Math.min(s.bottom-10,e-18));return ut("g",{class:`pin ${pn(i)}`,"data-finding":i.n},ut("path",{d:`M${q(t)} ${q(e)}L${q(o)} ${q(a)}`}),ut("circle",{class:"pin-dot",cx:q(t),cy:q(e),r:2.6}),ut("circle",{class:"pin-head",cx:q(o),cy:q(a),r:9}),ut("text",{x:q(o),y:q(a+4),"text-anchor":"middle"},String(i.n)))}function Na(i,t,e,n){if(!i.at)return null;let{x:s,y:r,z:o,u:a}=e.stations,l=[i.at[0]-s[n],i.at[1]-r[n],i.at[2]-o[n]],c=(g,_)=>g[0]*_[0]+g[1]*_[1]+g[2]*_[2],u=a[n],h=t.beam,d=c(l,u),f=-c(l,h);return[d,f,Math.sqrt(Math.max(c(l,l)-d*d-f*f,0))]}function _0(i,t,e,n){let s=Na(i,t,e,n);return s&&s[2]<=.6?[s[0],s[1]]:null}function mh(i,t,e){if(!i.at||i.station===null||i.from_s===null||i.column&&e.stations[i.column])return null;let n=Na(i,t,e,i.station);return n&&n[2]<=.6&&Math.hypot(n[0],n[1])>.3?[n[0],n[1]]:null}function x0([i,t,e]){return[[i,i>0?yt("outward"):yt("inward")],[t,t>0?yt("above"):yt("below")],[e,yt("along the seam")]].filter(([s])=>Math.abs(s)>=.5).map(([s,r])=>`${Ln(Math.abs(s),1)} ${r}`).join(", ")}var y0=14;function Wd(i,t,e,n){let s=i.column===null?void 0:t.stations[i.column];return s&&i.station!==e?n.value(s[e]??null,i.column):i.value}var gh=class{constructor(t,e,n,s,r,o,a,l,c){this.root=t;this.words=e;this.bands=n;this.here=s;this.key=r;this.contour=o;this.station=a;this.plot=l;this.width=c}root;words;bands;here;key;contour;station;plot;width;margins={left:[],right:[]};shown=new Set;value(t){return this.contour.stations[t]?.[this.station]??null}finding(t){let e=[t.column,...t.judged??[]];return this.here.find(n=>e.includes(n.column??"")||e.includes(n.quantity))??null}text(t){return Wd(t,this.contour,this.station,this.words)}lines(t,e,n){let s=e!==null&&e.column!==null&&e.column!==t.column,r=e&&e.value!=="–"&&(s||e.column===t.column)?this.text(e):this.words.value(this.value(t.column),t.column),o=e?.limit||this.bands.find(h=>h.columns.includes(t.column)&&h.words)?.words||"",a=e?.target&&r!==yt("not measured")?` → ${e.target}`:"",l=Ys(t.title,n).map(h=>["dim-title",h]),c=e?`${Dr[e.severity]}${e.n}: ${r}`:r,u=a&&yr(c+a,14,600)>n?[c,a.trim()]:[c+a];l.push(...u.flatMap(h=>Ys(h,n,3,14,600)).map(h=>["dim-value",h])),s&&this.words.unit(e.column)!==this.words.unit(t.column)&&l.push(["dim-limit",this.words.value(this.value(t.column),t.column)]);for(let h of o?Ys(o,n):[])l.push(["dim-limit",h]);for(let h of t.also??[])l.push(...Ys(h,n).map(d=>["dim-limit",d]));return l}group(t,e){return e&&this.shown.add(e),ut("g",{class:`dim-label ${e?pn(e):""}`,"data-column":t.column,"data-finding":e?.n})}arrows(t,e,n,s,r=""){let o=Math.hypot(n-t,s-e),a=`url(#${this.key}-arrow)`,l=`dim ${r}`;if(o>=22){this.root.append(ut("path",{class:l,d:`M${q(t)} ${q(e)}L${q(n)} ${q(s)}`,"marker-start":a,"marker-end":a}));return}let[c,u]=o>.01?[(n-t)/o,(s-e)/o]:[0,1];this.root.append(ut("path",{class:l,d:`M${q(t-c*16)} ${q(e-u*16)}L${q(t)} ${q(e)}`,"marker-end":a}),ut("path",{class:l,d:`M${q(n+c*16)} ${q(s+u*16)}L${q(n)} ${q(s)}`,"marker-end":a}))}change(t,[e,n],[s,r]){Math.hypot(s-e,r-n)<3||this.root.append(ut("path",{class:`change ${pn(t)}`,d:`M${q(e)} ${q(n)}L${q(s)} ${q(r)}`,"marker-end":`url(#${this.key}-to)`,"data-finding":t.n}))}sketch(t,[e,n]){this.root.append(ut("path",{class:t,d:`M${q(e[0])} ${q(e[1])}L${q(n[0])} ${q(n[1])}`}))}word(t,[e,n],s,r){this.root.append(ut("g",{class:`dim-label ${pn(t)}`},ut("text",{class:"dim-value",x:q(e),y:q(n),"text-anchor":s},r)))}margin(t,e,n,s,r){for(let[o,a]of[t,e])this.root.append(ut("path",{class:"extension",d:`M${q(o)} ${q(a)}V${q(n-4)}`}));this.arrows(Math.min(t[0],e[0]),n,Math.max(t[0],e[0]),n),this.root.append(ut("g",{class:"dim-label"},ut("text",{class:"dim-limit",x:q(t[0]-s*20),y:q(n+4),"text-anchor":s>0?"end":"start"},r)))}across(t,e,n,s,r,o=0){let[a,l]=[Math.min(t,e),Math.max(t,e)],c=this.finding(r),u=c?pn(c):"";[a,l].forEach((M,z)=>this.root.append(ut("path",{class:"extension",d:`M${q(M)} ${q(s[z])}V${q(n-4)}`}))),this.arrows(a,n,l,n,u);let h=this.group(r,c),d=o===0?(a+l)/2:o>0?a+4:l-4,f=o===0?"middle":o>0?"start":"end",g=this.lines(r,c,260),_=g.filter(([M])=>M==="dim-title"),p=g.filter(([M])=>M==="dim-value"),m=g.filter(([M])=>M==="dim-limit"),x=_.map(([,M])=>M).join(" "),A=p.map(([,M])=>M).join(" "),b=o===0?2*Math.min(d,this.width-d):o>0?this.width-d:d,R=yr(`${x}  `,12,500)+yr(A,14,600)<=b-6,w=ut("text",{class:"dim-value",x:q(d),y:q(n-6),"text-anchor":f});R&&w.append(ut("tspan",{class:"dim-title"},`${x}  `)),w.append(ut("tspan",{class:"dim-value"},A)),h.append(w),(R?m:[..._.length?Ys(x,b-6).map(M=>["dim-title",M]):[],...m]).reverse().forEach(([M,z],F)=>h.append(ut("text",{class:M,x:q(d),y:q(n-19-F*13),"text-anchor":f},z))),this.root.append(h)}along(t,e,n,s){let r=this.edge(t),o=this.finding(s);for(let[a,l]of[e,n])this.root.append(ut("path",{class:"extension",d:`M${q(a)} ${q(l)}H${q(r+t*4)}`}));this.arrows(r,e[1],r,n[1],o?pn(o):""),this.slot(t,(e[1]+n[1])/2,s)}leader(t,e,n){let s=this.edge(t),r=s+t*4;this.slot(t,e[1],n,o=>this.root.append(ut("path",{class:"leader",d:`M${q(r+t*4)} ${q(o)}H${q(r-t*6)}L${q(e[0])} ${q(e[1])}`}),ut("circle",{class:"leader-dot",cx:q(e[0]),cy:q(e[1]),r:2})),e)}edge(t){return t<0?this.plot.x-12:this.plot.x+this.plot.w+12}slot(t,e,n,s=()=>{},r){let o=this.edge(t)+t*10,a=t<0?"end":"start",l=this.finding(n),c=(t<0?o:this.width-o)-5,u=this.lines(n,l,c),h=this.group(n,l);this.root.append(h),this.margins[t<0?"left":"right"].push({wanted:e,height:u.length*y0,end:r,put:d=>{u.forEach(([f,g],_)=>h.append(ut("text",{class:f,x:q(o),y:q(d+11+_*y0),"text-anchor":a},g))),s(d+8)}})}settle(t,e){Hd(this.margins.left,t,e,this.edge(-1)+2),Hd(this.margins.right,t,e,this.edge(1)-2)}};function v0(i,t,e,n,s,r,o,a){let l=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),c=i("light_lean"),u=i("light_enters_inner"),h=i("light_enters_outer"),d=u!==null&&h!==null,f=(i("light_width")??2*t)/2+n.margin,[g,_]=d?[u-n.margin,h+n.margin]:[-f,f],p=Math.max((s.at(0,l)[1]-s.ceiling)/s.scale,0),m=C=>Math.tan(C*Math.PI/180)*p,[x,A]=d?[g+m((c??0)-n.cone),_+m((c??0)+n.cone)]:[g,_],b=C=>{let O=(C+f)/(2*f),H=(B,st)=>B+O*(st-B);return{above:H(x,A),enters:H(g,_),foot:C}},R=(C,O)=>{let[H,B]=s.at(C,O??l+p);return`${q(H)} ${q(O===null?s.ceiling:B)}`},w=(C,O)=>O>=l?C.enters+(C.above-C.enters)*(O-l)/Math.max(p,1e-9):C.foot+(C.enters-C.foot)*O/Math.max(l,1e-9),y=(C,O,H)=>{let B=H===null?[R(C.above,null),R(C.enters,l)]:H>l?[R(w(C,H),H),R(C.enters,l)]:[R(w(C,H),H)],st=H===null?[R(O.enters,l),R(O.above,null)]:H>l?[R(O.enters,l),R(w(O,H),H)]:[R(w(O,H),H)];return`M${[...B,R(C.foot,0),R(O.foot,0),...st].join("L")}Z`},M=[ut("path",{class:"light",d:y(b(-f),b(f),null)})],z=r.filter(C=>C.leans===(c!==null)||r.every(O=>O.leans===C.leans)),F=C=>Math.abs(C)>=f-n.margin-.001?Math.sign(C)*f:C;for(let C of z){let O=C.v!==null&&C.v<l+p?C.v:null;M.push(ut("path",{class:C.share>0?"shade part":"shade",d:y(b(F(C.low)),b(F(C.high)),O),"data-low":C.low,"data-high":C.high,"data-share":C.share}))}let P=Math.max(z.length?4:1,Math.min(z.length?6:4,Math.round(2*f*s.scale/26)));for(let C=0;C<P;C++){let O=b(-f+n.margin+(C+.5)/P*2*(f-n.margin)),H=z.find(et=>O.foot>=et.low-1e-6&&O.foot<=et.high+1e-6),B=Math.min(6/s.scale,l>0?l:.1);if(!H){M.push(ut("path",{class:"ray","marker-end":`url(#${o}-arrow)`,d:`M${R(O.above,null)}L${R(O.enters,l)}L${R(w(O,B),B)}`}));continue}let st=H.v!==null&&H.v<l+p?H.v:l+p*.8,[X,J]=s.at(w(O,st),st);M.push(ut("path",{class:"ray lost",d:`M${R(w(O,st),st)}L${st>l?`${R(O.enters,l)}L`:""}${R(w(O,B),B)}`}),ut("path",{class:"ray",d:`M${R(O.above,null)}L${R(w(O,st),st)}`}),ut("path",{class:H.share>0?"stop part":"stop",d:`M${q(X-5)} ${q(J-5)}L${q(X+5)} ${q(J+5)}M${q(X-5)} ${q(J+5)}L${q(X+5)} ${q(J-5)}`}))}let L=[],U=z.find(C=>C.part);if(U){let C=U.v!==null&&U.v>=l+p,O=[U.v!==null?yt("{height} above the rib",{height:Ln(U.v,1)}):"",Math.abs(U.along??0)>.5?`${Ln(Math.abs(U.along),1)} ${U.along>0?yt("ahead"):yt("back")}`:""].filter(Boolean).join(", "),H=b(-f),B=U.v!==null&&!C?U.v:l+p,[st,X]=s.at(Math.min(H.above,H.enters,H.foot),B),J=`${a(U.part)}${O?`, ${O}`:""}`;L.push(ut("text",{class:"caster","text-anchor":"end",x:q(Math.max(st-8,s.left+yr(J,12,600)+2)),y:q(Math.max(s.ceiling+12,X-4)),"data-part":U.part},J))}return{drawn:M,told:L}}function _h(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,s1(i.segments,s));return e}function s1(i,t){let e=[],n=new Map,s=(h,d)=>{let[f,g]=[Math.round(h/.001),Math.round(d/.001)];for(let[_,p]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let m=n.get(`${_},${p}`);if(m!==void 0&&Math.hypot(e[m][0]-h,e[m][1]-d)<=.001)return m}return e.push([h,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(h,d,f)=>{r.has(h)||r.set(h,[]),r.get(h).push([d,f])};for(let h of t){let d=s(i[4*h],i[4*h+1]),f=s(i[4*h+2],i[4*h+3]);d!==f&&(o(d,h,f),o(f,h,d))}let a=new Set,l=h=>{let d=[h];for(let f=h;;){let g=r.get(f)?.find(([_])=>!a.has(_));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===h))return d}},c=[],u=[...r.keys()].sort((h,d)=>(r.get(h).length%2?0:1)-(r.get(d).length%2?0:1));for(let h of u)for(;r.get(h).some(([d])=>!a.has(d));)c.push(l(h).map(d=>e[d]));return r1(c)}function r1(i){let t=i.filter(n=>Ua(n)),e=i.filter(n=>!Ua(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!Ua(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(Xd(r,a[0]))n=[...n,...a];else if(Xd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var Xd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,Ua=i=>i.length>2&&Xd(i[0],i[i.length-1]);function S0(i,t){return t===0?i:i?.map(e=>e.map(([n,s])=>[n,s-t*n]))}function vr(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var b0=.01;function w0(i,t,e,n,s,r){let o=[],a=0;for(let l=0;a<r&&l<2e3;l++){let c=n*(l+.5)*b0,u=M0(vr(t,c),e).map(([p])=>p),d=M0(vr(i,c),e).filter(([p])=>p<.5).map(([,p])=>p);if(!u.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(p=>p<Math.min(...u)+.5)),g=Math.min(...u.filter(p=>p>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let _=g-s;if(_>f)o.push({u:c,low:f,high:_,drawn:g}),a+=(_-f)*b0;else if(a>.02)break}return o}function M0(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var vh=3;function A0(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:l,frame:c}=i,u=n.stations.s[s],h=gt=>n.stations[gt]?.[s]??null,d=Wr(i.findings,t,n,s),f=t.rib_on==="none"||d.some(gt=>gt.rule==="rib-missing"&&!gt.waived),g=o<560?100:112,_=d.slice(0,vh).map(gt=>u1(gt,n,s,r,o)),p=_.reduce((gt,It)=>gt+It.length,0)+(d.length>vh?1:0),m=74+(p?p*16:0),x={x:g,y:m,w:o-2*g,h:a-m-34},A=Math.min(x.w/(c.right-c.left),x.h/(c.top-c.bottom)),b=c.left-(x.w/A-(c.right-c.left))/2,R=c.top+(x.h/A-(c.top-c.bottom))*.15,w=gt=>x.x+(gt-b)*A,y=gt=>x.y+(R-gt)*A,M=i.sections?.slope(s)??0,z=(gt,It)=>[w(gt),y(It+M*gt)],F={at:z,scale:A,ceiling:x.y-24,left:x.x},P=t.rib_on==="cover"?-1:1,L=ut("svg",{class:"section-drawing",viewBox:`0 0 ${q(o)} ${q(a)}`,width:q(o),height:q(a),role:"img","aria-label":yt("Section across the seam at s = {place}",{place:Ln(u,2)}),"data-slope":M});L.append(ut("defs",null,yh(`${l}-base`,"hatch-base",6,45),yh(`${l}-cover`,"hatch-cover",15,-45),yh(`${l}-other`,"hatch-other",5,90),yh(`${l}-trap`,"hatch-trap",4,90),ut("clipPath",{id:`${l}-window`},ut("rect",{x:x.x,y:x.y-24,width:x.w,height:x.h+24})),ut("marker",{id:`${l}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},ut("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"})),ut("marker",{id:`${l}-to`,viewBox:"0 0 10 10",refX:8,refY:5,markerWidth:4.5,markerHeight:4.5,orient:"auto"},ut("path",{d:"M0 0 L10 5 L0 10 Z",fill:"context-stroke"}))));let U=i.sections?.at(s)??null,C=U?_h(U):new Map,O=ut("g",{"clip-path":`url(#${l}-window)`});L.append(O);let H=(h("rib_width_top")??h("rib_width"))===null?null:(h("rib_width_top")??h("rib_width"))/2,B=e.drop,st=i.sections?.shadeAt(s)??[],X=H===null?null:v0(h,H,P,e,F,st,l,gt=>r.part(gt));X&&O.append(...X.drawn);let J=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}],et=P>0?0:1,ft=P>0?0:-(B??0);if(!f&&B!==null){let gt=It=>S0(C.get(It),M);for(let It of J){let Ut=h(`trap_area_${It.name}`);Ut===null||!C.size||(It.columns=w0(gt(et),gt(1-et),P,It.side,B,Ut),It.columns.length>=2&&O.append(...d1(It.columns,P,ft,z,l)))}}let lt=new Set(st.map(gt=>i.sections?.ownerOf(gt.part)).filter(gt=>gt!==void 0));for(let gt of[...C.keys()].sort((It,Ut)=>T0(It)-T0(Ut))){let It=gt===0?"base":gt===1?"cover":"other",Ut=C.get(gt).map(ee=>xh(ee,w,y)).join("");O.append(ut("path",{class:`body ${It}`,d:Ut,"fill-rule":"evenodd"}),ut("path",{class:"hatching",d:Ut,"fill-rule":"evenodd",fill:`url(#${l}-${It})`}),ut("path",{class:`outline ${It}${lt.has(gt)?" casts":""}`,d:Ut,"data-part":It==="other"?i.sections?.partOf(gt):null}))}let K=!f&&H!==null&&e.collapse!==null&&C.get(et)!==void 0;if(K){let gt=`${l}-melt`,It=H*1.6,Ut=-e.collapse*P;L.querySelector("defs").append(ut("clipPath",{id:gt},ut("path",{d:C.get(et).map(Re=>xh(Re,w,y)).join(""),"clip-rule":"evenodd"})));let ee=P>0?C.get(1):void 0,he=ut("g",ee?{"clip-path":`url(#${gt}-pressed)`}:{});ee&&L.querySelector("defs").append(ut("clipPath",{id:`${gt}-pressed`},ut("path",{d:ee.map(Re=>xh(Re,w,Ce=>y(Ce-B))).join(""),"clip-rule":"evenodd"})));let ne=[z(-It,0),z(It,0),z(It,Ut),z(-It,Ut)];he.append(ut("path",{class:"melt","clip-path":`url(#${gt})`,d:`M${ne.map(([Re,Ce])=>`${q(Re)} ${q(Ce)}`).join("L")}Z`})),O.append(he)}!f&&B!==null&&C.get(1)&&O.append(ut("path",{class:"moved",d:C.get(1).map(gt=>xh(gt,w,It=>y(It-B))).join("")}));let[dt,rt]=[b+x.w/A,R-x.h/A];for(let gt of C.values()){for(let It of[b,dt])for(let[Ut,ee]of vr(gt,It))O.append(...E0([w(It),y(Ut)],[w(It),y(ee)]));for(let[It,Ut]of vr(f1(gt),rt))O.append(...E0([w(It),y(rt)],[w(Ut),y(rt)]))}L.append(...X?.told??[]),C.size?i.sections?.isNeighbour(s)&&L.append(ut("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},yt("outline of the next station; values of this one"))):L.append(ut("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?yt("No section was kept at this station."):yt("The document carries no section outlines.")));let _t=new gh(L,r,e.bands,d,l,n,s,x,o),xt=o1(i,_t,{half:H,at:z,plot:x,sides:J,up:P,sunk:ft,ribless:f,melts:K,slope:M,X:w,Y:y});return _t.settle(x.y-26,a-24),h1(L,d,_t,i,xt,x,w,y,_),L.append(...p1(x.x+4,a-16,A)),L.append(ut("text",{class:"side",x:12,y:q(a-8)},`◂ ${yt("inner")}`),ut("text",{class:"side",x:q(o-12),y:q(a-8),"text-anchor":"end"},`${yt("outer")} ▸`)),L}function o1(i,t,e){let{contour:n,facts:s,compact:r,width:o}=i,{half:a,at:l,plot:c,sides:u,up:h,ribless:d,Y:f}=e,g=L=>t.value(L),_=g("gap")??0,p=g("cover_thickness"),m=(p??0)+(h>0?_:0),x=c.y-8,A=c.y-36,b=a??.5,R=Math.min(g("rib_height")??.6,4),w={rib:l(0,-.35*R*h),flank_inner:l(-b,-.5*R*h),flank_outer:l(b,-.5*R*h),cover:l(b*.4,m*.6),gap:l(-b*.7,_/2*h),light:[l(0,m)[0],l(0,m)[1]-14],below:l(0,-(R+.7)*h),land:l(b+s.margin+.5,m),other:l(0,0)};a!==null&&!d&&(t.across(l(-a,0)[0],l(a,0)[0],A,[l(-a,0)[1],l(a,0)[1]],{column:"rib_width",title:yt("rib width"),judged:["rib_width_top"]}),Zs(t,"rib_width",L=>[[l(-L/2,0),l(-L/2,-R*h)],[l(L/2,0),l(L/2,-R*h)]],L=>[-1,1].map(U=>[l(U*a,-R*h*.75),l(U*L/2,-R*h*.75)])));let y=g("clamp_land"),M=Gd(n);if(a!==null&&y!==null&&M){let L=(g(M>0?"light_enters_outer":"light_enters_inner")??M*a)+M*s.margin,U=l(L,m),C=l(L+M*y,m);w.land=[(U[0]+C[0])/2,(U[1]+C[1])/2];let O=M>0?[U[1],C[1]]:[C[1],U[1]],H=g("clamp_tilt")!==null&&t.finding({column:"clamp_tilt",title:""})!==null;if(t.across(U[0],C[0],x,O,{column:"clamp_land",title:o<560?yt("land"):yt("land from the beam's edge")},M),s.margin>0){let B=l(L-M*s.margin,m);t.margin(B,U,x,M,o<560?Ln(s.margin,2):`${yt("beam margin")} ${Ln(s.margin,2)}`)}if(Zs(t,"clamp_land",B=>[[l(L+M*B,m-.7),l(L+M*B,m+.25)]],B=>[[l(L+M*y,m),l(L+M*B,m)]]),H){let B=[C[0],U[1]];t.sketch("reference",[U,B]),t.change(t.finding({column:"clamp_tilt",title:""}),C,B),t.leader(M,[(C[0]+B[0])/2,(C[1]+B[1])/2],{column:"clamp_tilt",title:yt("tilt of the land")})}}if(p!==null){let L=h>0?_:0,U=a??0;t.along(1,l(U,L+p),l(U,L),{column:"cover_thickness",title:yt("cover"),judged:["cover_thickness_min","cover_thickness_max"]}),Zs(t,"cover_thickness",C=>[[l(-U*1.6,L+C),l(U*1.6,L+C)]],C=>[[l(U*.6,L+p),l(U*.6,L+C)]])}let z=t.finding({column:"transmission",title:""});if(z?.change&&p!==null){let L=h>0?_:0,U=a??.6,C=L+p-z.change;t.sketch(`ghost ${pn(z)}`,[l(-U*1.6,C),l(U*1.6,C)]),t.change(z,l(U*.6,L+p),l(U*.6,C))}Zs(t,"gap",L=>[[l(-b*1.5,L*h),l(b*1.5,L*h)]],L=>[[l(b*.5,_*h),l(b*.5,L*h)]]),a1(i,t,e),l1(i,t,e),g("gap")!==null&&t.leader(-1,w.gap,{column:"gap",title:yt("gap"),judged:["gap_min","gap_max"]});let F=_-(s.drop??0)+(s.collapse??0)<.02;e.melts&&p!==null&&F&&g("melt_area")!==null&&!r&&t.leader(-1,l(-a*.5,-s.collapse*.5*h),{column:"melt_area",title:yt("melts")});let P=g("support_depth");if(P!==null&&i.findings.some(L=>L.quantity==="support_open"&&Wr([L],i.joint,n,i.station).length)&&t.along(-1,l(0,0),[l(0,0)[0],f(-P)],{column:"support_depth",title:i.words.title("support_depth")}),d)return w;for(let{side:L,name:U,columns:C}of u){let O=g(`rib_height_${U}`),H=a===null?0:L*a;if(O!==null&&O<6){let lt=O===g("rib_height");t.along(L,l(H,0),l(H,-O*h),{column:`rib_height_${U}`,title:yt("rib height"),judged:lt?["rib_height"]:[]}),lt&&Zs(t,"rib_height",rt=>[[l(H,-rt*h),l(H+L*1.2,-rt*h)]],rt=>[[l(H+L*.6,-O*h),l(H+L*.6,-rt*h)]],[`rib_height_${U}`]);let K=g("rib_width_mid");K!==null&&lt&&Zs(t,"slenderness",rt=>[[l(H,-rt*K*h),l(H+L*1.2,-rt*K*h)]],rt=>[[l(H+L*.6,-O*h),l(H+L*.6,-rt*K*h)]]);let dt=g(`draft_${U}`);if(dt!==null&&a!==null){let rt=_t=>l(H+L*O*Math.tan(_t*Math.PI/180),-O*h);Zs(t,`draft_${U}`,_t=>[[l(H,0),rt(_t)]],_t=>[[rt(dt),rt(_t)]])}}let B=g(`trap_area_${U}`),st=C[Math.floor(C.length/2)],X=C[C.length-1],J=st?l(st.u,(st.low+st.high)/2*h+e.sunk):l(L*b*2,-.5*R*h);if(w[`trap_${U}`]=J,w[`exit_${U}`]=X?l(X.u,X.high*h+e.sunk):J,B!==null){let lt=g(`trap_room_${U}`),K=g("melt_area"),dt={column:`trap_area_${U}`,title:yt("trap, collapsed"),judged:[`trap_room_${U}`,`trap_corner_${U}`,"trap_room"]},rt=t.finding(dt),_t=s.bands.find(xt=>xt.rule==="trap-side")?.words??"";if(t.leader(L,J,{...dt,also:[...lt===null||rt?[]:[`${_i(lt,2)} × ${yt("½ melt")}${_t?`, ${_t}`:""}`],...K===null?[]:[`${yt("½ melt")} ${vf(K/2,2)}`],...rt?.wide&&rt.change?[yt("width {now} → {wanted}",{now:Ln(rt.wide,2),wanted:Ln(rt.wide+rt.change,2)})]:[]]}),rt?.change&&X&&C.length>2){let xt=X.u+L*rt.change,gt=C[Math.floor(C.length/2)].low*h+e.sunk,It=X.high*h+e.sunk;t.sketch(`ghost ${pn(rt)}`,[l(xt,gt),l(xt,It)]),t.change(rt,l(X.u,(gt+It)/2),l(xt,(gt+It)/2)),rt.wide&&t.arrows(...l(X.u-L*rt.wide,gt+.15*(It-gt)),...l(X.u,gt+.15*(It-gt)),pn(rt))}}let et=t.finding({column:`trap_open_${U}`,title:""});if(et&&X){let lt=s.bands.find(xt=>xt.rule==="lip-gap")?.edges.find(xt=>xt.column===`lip_gap_${U}`),K=et.leaves??(typeof lt?.low=="number"&&typeof lt.high=="number"?(lt.low+lt.high)/2:.2),dt=C[Math.floor(C.length/2)].low*h+e.sunk,rt=X.high*h+e.sunk-K*h,_t=X.u-L*Math.min(.8,.35*Math.abs(X.u-C[0].u));t.sketch(`ghost ${pn(et)}`,[l(X.u,dt),l(X.u,rt)]),t.sketch(`ghost ${pn(et)}`,[l(X.u,rt),l(_t,rt)]),t.sketch(`ghost ${pn(et)}`,[l(_t,rt),l(_t,dt)])}let ft=g(`lip_gap_${U}`);if(ft!==null&&(!r||t.finding({column:`lip_gap_${U}`,title:""}))){let lt={column:`lip_gap_${U}`,title:yt("lip gap")};if(!X)t.leader(L,w[`exit_${U}`],lt);else{let K=t.finding(lt),dt=X.u+L*.12,rt=X.high*h+e.sunk,_t=rt-ft*h;t.arrows(...l(dt,rt),...l(dt,_t),K?pn(K):""),t.leader(L,l(dt,(rt+_t)/2),lt),Zs(t,`lip_gap_${U}`,xt=>[[l(X.u,rt-xt*h),l(X.u+L*.9,rt-xt*h)]],xt=>[[l(dt+L*.35,_t),l(dt+L*.35,rt-xt*h)]])}}}return w}function Zs(i,t,e,n,s=[]){let r=i.finding({column:t,title:"",judged:[`${t}_top`,`${t}_min`,`${t}_max`,...s]});if(!(!r||r.goal===null)){for(let o of e(r.goal))i.sketch(`ghost ${pn(r)}`,o);for(let[o,a]of n(r.goal))i.change(r,o,a)}}function a1(i,t,{at:e,X:n,Y:s,plot:r,up:o}){let a={column:"free_travel",title:yt("free travel"),judged:["free_travel"]},l=t.finding(a),c=t.value("free_travel");if(!l||l.goal===null)return;let u=l.station===i.station||c===null?l.number:c,h=l.met&&Na({...l,at:l.met},i.joint,i.contour,i.station),d=h?null:_0(l,i.joint,i.contour,i.station),[f,g]=d??[h?.[0]??0,o>0?t.value("gap")??0:0],_=d?[n(f),s(g)]:e(f,g);if(u===null||_[0]<r.x||_[0]>r.x+r.w)return;let p=Math.abs(s(1)-s(0)),m=x=>[_[0],_[1]+x*p];t.sketch(`ghost ${pn(l)}`,[[_[0]-26,m(l.goal)[1]],[_[0]+26,m(l.goal)[1]]]),t.change(l,m(u),m(l.goal)),t.along(_[0]>r.x+r.w/2?1:-1,_,m(u),a)}function l1(i,t,{X:e,Y:n,plot:s}){let r=t.finding({column:"beam_clear",title:"",judged:["light_clear"]});if(!r?.way||!r.change)return;let o=(i.sections?.shadeAt(i.station)??[]).filter(f=>f.v!==null&&f.part);if(!o.length)return;let a=r.way==="outward"?1:-1,l=Math.min(...o.map(f=>f.v)),c=o.map(f=>f.leans&&f.u!==null?[f.u,f.u]:[f.low,f.high]),u=a<0?Math.max(...c.map(f=>f[1])):Math.min(...c.map(f=>f[0]));if(n(l)<s.y||e(u)<s.x||e(u)>s.x+s.w)return;let h=u+a*r.change,d=Math.max(n(l)-32,s.y+6);t.sketch(`ghost ${pn(r)}`,[[e(h),d-12],[e(h),d+26]]),t.change(r,[e(u),d],[e(h),d]),t.word(r,[e(u)+(a<0?8:-8),d+5],a<0?"start":"end",Ln(r.change,2))}function c1(i,t){let e=i.column||i.quantity,n=e.endsWith("_inner")?"inner":e.endsWith("_outer")?"outer":"",s=e.startsWith("draft")?`flank_${n}`:e.startsWith("trap_open")||e.startsWith("lip")?`exit_${n}`:e.startsWith("trap")?`trap_${n||"outer"}`:e.startsWith("clamp")?"land":/^(beam|light|spot|path_in_cover)/.test(e)?"light":/^(cover|transmission|mean_path)/.test(e)?"cover":/^(gap|free_travel|stop|local_collapse|collapse)/.test(e)?"gap":/^(support|overhang|wall|nest)/.test(e)?"below":/^(rib|slenderness|melt)/.test(e)?"rib":"other";return t[s]??t.other}function h1(i,t,e,n,s,r,o,a,l){let c={left:r.x,right:r.x+r.w,top:r.y-24,bottom:r.y+r.h},u=([g,_])=>g>=c.left&&g<=c.right&&_>=c.top&&_<=c.bottom,h=new Map;for(let g of t){if(e.shown.has(g))continue;let _=mh(g,n.joint,n.contour),p=_?[..._,0]:g.column&&n.contour.stations[g.column]?null:Na(g,n.joint,n.contour,n.station),m=p?x0(p):"",x=p&&m?[o(p[0]),a(p[1])]:null,A=(M,z,F)=>Math.max(M,Math.min(F,z)),[b,R]=x?[A(c.left+6,x[0],c.right-6),A(c.top+30,x[1],c.bottom-6)]:c1(g,s),w=`${Math.round(b/8)},${Math.round(R/8)}`,y=h.get(w)??0;if(h.set(w,y+1),i.append(g0(g,b,R,y,c)),x&&(!u(x)||p[2]>.6)){let M=b<(c.left+c.right)/2;i.append(ut("path",{class:`change ${pn(g)}`,d:`M${q(b-Math.sign(x[0]-b)*18)} ${q(R-Math.sign(x[1]-R)*18)}L${q(b)} ${q(R)}`,"marker-end":`url(#${n.key}-to)`}),ut("text",{class:"pin-where",x:q(M?b+36:b-12),y:q(R-2),"text-anchor":M?"start":"end"},m))}}let d=t.slice(vh).length,f=0;t.slice(0,vh).forEach((g,_)=>{for(let p of l[_])i.append(ut("text",{class:`mark-line ${pn(g)}`,x:12,y:q(15+f++*16),"data-mark":g.n},p))}),d&&i.append(ut("text",{class:"mark-line",x:12,y:q(15+f*16)},yt("and {count} more here",{count:d})))}function u1(i,t,e,n,s){return Ys(m0(i,Wd(i,t,e,n)),s-28,3,13,600)}function d1(i,t,e,n,s){let r=$d(i,a=>a.low*t+e,a=>a.high*t+e,n),o=t>0?$d(i,a=>a.high,a=>a.drawn,n):$d(i,a=>e-a.low,a=>-a.low,n);return[ut("path",{class:"trap-lost",d:o}),ut("path",{class:"trap",d:r}),ut("path",{fill:`url(#${s}-trap)`,d:r})]}var f1=i=>i.map(t=>t.map(([e,n])=>[n,e]));function E0([i,t],[e,n]){let s=Math.hypot(e-i,n-t),r=Math.max(2,Math.round(s/9)),[o,a]=[(e-i)/r,(n-t)/r],[l,c]=[-a/Math.hypot(o,a),o/Math.hypot(o,a)],u=`M${q(i)} ${q(t)}`;for(let h=1;h<=r;h++){let d=h===r?0:h%2?5:-5;u+=`L${q(i+h*o+d*l)} ${q(t+h*a+d*c)}`}return[ut("path",{class:"torn gap",d:u}),ut("path",{class:"torn",d:u})]}var T0=i=>i===0?1:i===1?2:0;function xh(i,t,e){return"M"+i.map(([n,s])=>`${q(t(n))} ${q(e(s))}`).join("L")+(Ua(i)?"Z":"")}function $d(i,t,e,n){let s=(a,l)=>n(a,l).map(q).join(" "),r=i.map(a=>s(a.u,t(a))),o=[...i].reverse().map(a=>s(a.u,e(a)));return`M${[...r,...o].join("L")}Z`}function yh(i,t,e,n){return ut("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},ut("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function p1(i,t,e){let n=Ei()*e,s=Ei()===1?[1,2,5,10]:[.02,.05,.1,.2,.5],r=s.find(a=>a*n>35)??s[s.length-1],o=[];for(let a=0;a<4;a++)o.push(ut("rect",{class:a%2?"scale-light":"scale-dark",x:q(i+a*r*n/4),y:t,width:q(r*n/4),height:4}));return o.push(ut("text",{class:"side scale-length",x:q(i+r*n+6),y:t+5},`${_i(r,r<1?r<.1?2:1:0)} ${Qs()}`)),o}var m1=0,qd=new WeakMap,Fa=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${m1++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=Yd(this.atlas,t,e,n,this.key,this.compact);en(this.host),this.host.append(s)}};function Yd(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],l=i.sectionsOf(o.id,a.id);qd.has(a)||qd.set(a,p0(o,a,i.payload.facts[t.joint].margin,l));let c=ml(i).shown(o.id,{facts:i.payload.facts[t.joint],contour:a,sections:l,findings:i.payload.findings});return A0({joint:o,station:t.station,...c,words:i.words,width:e,height:n,compact:r,key:s,frame:_1(qd.get(a),Wr(c.findings,o,a,t.station),o,a,c.sections?.at(t.station)??null)})}var R0=16,g1=.8;function _1(i,t,e,n,s){let r=i.bottom;for(let o of t){let a=mh(o,e,n);if(!a||a[0]<i.left||a[0]>i.right||a[1]>0||a[1]<-R0)continue;let l=s?[..._h(s).values()].flatMap(c=>vr(c,a[0])).map(([,c])=>c).filter(c=>c<a[1]):[];r=Math.min(r,Math.max(l.length?Math.max(...l):a[1],a[1]-R0)-g1)}return{...i,bottom:r}}function Zd(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,l=t.station;return qt("span",null,qt("b",{"data-s":s[l]},`s = ${Ln(s[l],2)}`),` · ${yt("station {number} of {count}",{number:l+1,count:s.length})}`,e.contours.length>1?` · ${yt("path")} ${n.id}`:"",` · x ${Rs(r[l],2)}  y ${Rs(o[l],2)}  z ${Rs(a[l],2)} ${Qs()}`)}var y1=i=>[yt("not measured"),yt("within"),yt("close to the limit"),yt("limit broken"),yt("broken, waived"),yt("to be looked at"),yt("noted")][i],C0=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],v1=10,Oa=1e3,Sh=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=qt("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,en(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=m=>m/e*Oa,o=qt("div",{class:"strip-board"});this.board=o;let a=ut("svg",{class:"ruler",viewBox:`0 0 ${Oa} 30`,preserveAspectRatio:"none","aria-hidden":!0}),l=qt("div",{class:"ruler-numbers","aria-hidden":!0}),c=this.host.clientWidth||1e3,u=c>820?c*.62:c-200,h=Ei()*b1(e/Ei()/Math.max(2,Math.min(8,u/50)));for(let{start:m,length:x,contour:A}of t){a.append(ut("line",{class:"ruler-line",x1:r(m),x2:r(m+x),y1:29,y2:29}));for(let b=0;b<=x+1e-6;b+=h/5){let R=Math.abs(b/h-Math.round(b/h))<1e-6;a.append(ut("line",{class:"ruler-line",x1:q(r(m+b)),x2:q(r(m+b)),y1:R?20:25,y2:29})),R&&x-b>Math.max(h*.45,e*.075)&&l.append(bh(qt("span",null,Ei()===1?`${Math.round(b)}`:_i(b/Ei(),h/Ei()<1?1:0)),r(m+b)))}e>0&&x>h&&l.append(bh(qt("span",{class:"end"},Rs(x,1)),r(m+x))),t.length>1&&l.append(bh(qt("b",null,n.contours[A].id),r(m+x/2))),this.turns(a,A,m,r)}o.append(qt("div",{class:"strip-head"},yt("unrolled seam, {unit}",{unit:Qs()})),qt("div",{class:"track ruler-track"},a,l,this.marks(r)),qt("div",{class:"strip-head end"},yt("here · limit")));let d=m=>s.bands[m].severity==="must-fix"||this.atlas.payload.findings.some(x=>x.rule===s.bands[m].rule&&x.joint===n.id&&x.severity!=="note"),f=m=>{let x=this.atlas.payload.findings.filter(A=>A.rule===s.bands[m].rule&&A.joint===n.id&&A.severity!=="note");return x.some(A=>A.severity==="must-fix"&&!A.waived)?0:x.length?1:d(m)?2:3},g=s.bands.map((m,x)=>x).sort((m,x)=>f(m)-f(x)),_=new Set(g.filter((m,x)=>d(m)&&(x<v1||f(m)<2)));for(let m of g){let x=s.bands[m],A=_.has(m)?"":" more",b=ut("svg",{viewBox:`0 0 ${Oa} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(m)});for(let{contour:w,start:y}of t){let M=n.contours[w],z=s.tracks[M.id]?.[m]??[];for(let[F,P,L]of z){let U=r(y+Mh(M.stations.s,F,0,M.length_mm)),C=r(y+Mh(M.stations.s,P,1,M.length_mm)),O=L>2?Math.max(7,C-U):C-U;b.append(ut("rect",{class:`cell ${Ho[L]}`,x:q((U+C-O)/2),y:C0[L][0],width:q(O),height:C0[L][1]}))}}let R=qt("div",{class:`strip-value${A}`,"data-rule":x.rule});this.values[m]=R,o.append(qt("div",{class:`strip-label${A}`,title:x.title},x.title),qt("div",{class:`track${A}`},b),R)}let p=g.length-_.size;if(this.host.append(this.cursor,o),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(p?38:18)}px`),p){let m=qt("button",{type:"button",class:"strip-more screen","aria-expanded":!1},yt("{count} further rules",{count:p}));m.addEventListener("click",()=>{let x=o.classList.toggle("open");m.setAttribute("aria-expanded",String(x)),m.textContent=x?yt("fewer rules"):yt("{count} further rules",{count:p}),this.moveCursor()}),this.host.append(m)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.corner_radius;if(a)for(let l=0;l<a.length;l++){if(a[l]===null||a[l]>60)continue;let c=l;for(;c+1<a.length&&a[c+1]!==null&&a[c+1]<=60;)c++;let[u,h]=[Mh(r.s,l,0,o),Mh(r.s,c,1,o)];t.append(ut("rect",{class:"turn",x:q(s(n+u)),width:q(s(h)-s(u)),y:20,height:9},ut("title",null,yt("bend of the seam")))),l=c}}marks(t){let e=this.atlas.payload.findings,n=qt("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let u of e)if(!(u.joint!==this.walk.joint.id||u.station===null||cl(u)))for(let h of as(u)){let d=this.walk.joint.contours.findIndex(f=>f.id===h.contour);r.push({x:t(s[d].start+this.walk.joint.contours[d].stations.s[h.station]),findings:[u],spot:h})}let o=this.host.clientWidth||1e3,a=o>820?o*.62:o-200,l=r.length>8?Xa:Cs,c=u=>Math.max(24,l(u.findings).length*7.5+6)/2;r.sort((u,h)=>u.x-h.x);for(let u=0;u+1<r.length;){let[h,d]=[r[u],r[u+1]];if((d.x-h.x)*a/Oa>=c(h)+c(d)+3){u++;continue}let f=[...new Set([...h.findings,...d.findings])].sort((g,_)=>g.n-_.n);r.splice(u,2,{spot:f[0]===h.findings[0]?h.spot:d.spot,x:(h.x*h.findings.length+d.x*d.findings.length)/(h.findings.length+d.findings.length),findings:f}),u=Math.max(0,u-1)}for(let{x:u,findings:h,spot:d}of r){let f=h[0],g=qt("button",{type:"button",class:`strip-mark ${f.waived?"waived":f.severity}`,"data-finding":f.n,"aria-label":yt("Go to finding {numbers}: {title}",{numbers:h.map(_=>_.n).join(", "),title:f.title})},l(h));g.addEventListener("click",()=>this.walk.showFinding(f,"finding",d)),n.append(bh(g,u))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,l,c]of n.tracks[o.id]?.[t]??[])c!==1&&s.push(yt("{state} from {low} to {high}",{state:y1(c),low:Rs(o.stations.s[a],1),high:Ln(o.stations.s[l],1)}));let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):yt("within everywhere")}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words,a=this.walk.findingsHere();n.bands.forEach((l,c)=>{let u=a.find(p=>p.rule===l.rule),h=this.values[c];en(h);for(let p of["must-fix","attention","note","waived"])h.classList.remove(p);u&&h.classList.add(u.waived?"waived":u.severity);let d=qt("span",{class:"values"},u?`${Dr[u.severity]} `:""),f=l.columns.filter(p=>Array.isArray(e.stations[p])).map(p=>{let m=e.stations[p][t.station]??null,x=m===null?o.reason(r.id,e.id,p,s):"",A=m===null?"–":l.columns.length>1&&o.unit(p)?o.bare(m,p):o.value(m,p);return qt("b",{"data-column":p,"data-value":String(m),title:x||o.title(p)},A)});!f.length&&u&&f.push(qt("b",{"data-finding":u.n},u.value)),f.forEach((p,m)=>d.append(m?" / ":"",p)),h.dataset.state=u?u.waived?"waived":u.severity:"";let g=u?void 0:a.find(p=>p.also.includes(l.rule)),_=g?yt("see finding {number}",{number:g.n}):u?.limit_short||l.words||"";h.append(d,qt("span",{class:"limit",title:u?.limit||_},_))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${q(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${q(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function bh(i,t){return i.style.left=`${t/Oa*100}%`,i}function Mh(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function b1(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var wh=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(s,r)=>fe(s)?.addEventListener("click",r);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1));let n=s=>{let r=this.walk.neighbourFinding(s);r&&this.walk.showFinding(r.finding,"finding",r.spot)};e("finding-back",()=>n(-1)),e("finding-on",()=>n(1)),this.slider.addEventListener("keydown",s=>{Eh(s,this.walk)&&s.preventDefault()})}walk;slider=fe("walk-slider");where=fe("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),s=this.walk.s,r=`s = ${Ln(s,2)}`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, ${yt("Finding")} ${n.map(c=>`${c.n} ${c.title}`).join(", ")}`:"")),en(this.where);let o=this.walk.contour;this.where.append(qt("b",{"data-station":t.station},r),qt("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=fe("walk-live"),l=n.map(c=>`${yt("Finding")} ${c.n}: ${c.title}`).join(". ");a&&a.textContent!==l&&(a.textContent=l)}};function Eh(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n.finding,"keys",n.spot),!0}}return!1}async function M1(){let i=fe("seamcheck-data");if(D0(()=>{}),!i)return;let t=await Ef(i);if(yf(t.voice),document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(_=>_.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new $a(t),n=new ll(t),s=new Fa(fe("section-figure"),e),r=new Fa(fe("section-beside"),e,!0),o=new pl(fe("plan-figure"),e,n),a=new Sh(fe("strip"),e,n),l=new wh(n),c=new ul(fe("charts-judged"),fe("charts-within"),fe("charts-further"),e,n),u=new Jd(e,n),h=!1;Do(fe("section-beside"),()=>{h=!0,r.show(n.place)}),n.listen((_,p)=>{s.show(_),h&&r.show(_),o.show(_),a.show(_),l.show(_),c.show(_),u.show(_,p==="finding"||p==="keys-finding");for(let m of["section-caption","beside-caption"]){let x=fe(m);en(x),x.append(Zd(e,_))}E1(e,n),T1(n)});for(let _ of["section-figure","plan-figure","strip","section-beside"])fe(_).addEventListener("keydown",p=>{Eh(p,n)&&p.preventDefault()});for(let _ of document.querySelectorAll("[data-go]"))_.addEventListener("click",p=>{let m=t.findings.find(x=>String(x.n)===_.dataset.go);m&&m.station!==null&&(p.preventDefault(),n.showFinding(m),_.dataset.top!==void 0&&fe("desk").scrollIntoView({block:"start"}))});for(let _ of document.querySelectorAll("[data-place]"))_.addEventListener("click",p=>{let[m,x,A]=_.dataset.place.split(" "),b=t.joints.findIndex(w=>w.id===m),R=t.joints[b]?.contours.findIndex(w=>w.id===x)??-1;R<0||(p.preventDefault(),n.go({joint:b,contour:R,station:Number(A)},"finding"))});let d=fe("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(_=>{d&&(d.value=String(_.joint))}),ml(e).wire(()=>{s.show(n.place),h&&r.show(n.place)}),w1(),S1(),fe("show-spread")?.addEventListener("change",_=>{fe("charts").classList.toggle("with-spread",_.target.checked)}),bf(t);let f=A1(e);if(D0(()=>{o.draw(),c.retheme(),u.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let _ of document.querySelectorAll("details.fold:not([open])"))_.open=!0,_.dataset.wasShut="";for(let _ of document.querySelectorAll("input[type=date]"))_.classList.toggle("unset",!_.value);for(let _ of f)_.forPrint();c.forPrint(fe("charts")?.classList.contains("with-spread")?245:318)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let _ of document.querySelectorAll("[data-was-shut]"))_.open=!1,delete _.dataset.wasShut;for(let _ of f)_.forScreen();c.forScreen()}),await document.fonts.ready,addEventListener("hashchange",()=>P0(n)),P0(n)){document.documentElement.dataset.ready="yes";return}let g=t.findings.find(_=>_.station!==null);g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}function P0(i){let t=decodeURIComponent(location.hash.slice(1)),e=/^f(\d+)$/.exec(t);if(e){let o=i.payload.findings.find(a=>a.n===Number(e[1])&&a.station!==null);return o&&i.showFinding(o),o!==void 0}let n=/^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(t);if(!n)return!1;let s=n[1]?i.payload.joints.findIndex(o=>o.id===n[1]):0,r=n[2]?i.payload.joints[s]?.contours.findIndex(o=>o.id===n[2])??-1:0;return s<0||r<0?!1:(i.go({joint:s,contour:r,station:mu(i.payload.joints[s].contours[r].stations.s,Number(n[3]))},"finding"),!0)}function S1(){let i=()=>{let t=document.querySelector(`${/^#finding-\d+$/.test(location.hash)?location.hash:"#none"} .sheet-fold`);t&&(t.open=!0)};addEventListener("hashchange",i),i()}function w1(){let i=fe("list-filter"),t=fe("list-order"),e=document.querySelector("#finding-list tbody");if(!i||!t||!e)return;let n=[...e.querySelectorAll("[data-row]")],s=()=>{let r=i.value,o=h=>!r||h.dataset.severity===r||`rule:${h.dataset.rule}`===r;for(let h of n)h.hidden=!o(h);let a=n.filter(o).length;fe("list-count").textContent=a===n.length?`(${n.length})`:yt("({shown} of {all})",{shown:a,all:n.length});for(let h of e.querySelectorAll(".group-head"))h.remove();let l=h=>t.value==="rule"?[h.dataset.rule??"",0]:["",t.value==="s"?Number(h.dataset.s||1e9):0],c=[...n].sort((h,d)=>l(h)[0].localeCompare(l(d)[0])||l(h)[1]-l(d)[1]||Number(h.dataset.row)-Number(d.dataset.row));if(e.append(...c),t.value!=="rule")return;let u=c.filter(o);for(let h of u){let d=u.filter(f=>f.dataset.rule===h.dataset.rule);d[0]===h&&h.before(qt("tr",{class:"group-head"},qt("th",{colspan:3,scope:"rowgroup"},`${h.dataset.title} (${d.length})`)))}};i.addEventListener("change",s),t.addEventListener("change",s)}var Jd=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;fe("pane-plan").hidden=r!=="plan",fe("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=fe("space-figure");this.atlas.meshes.length||t.append(qt("p",{class:"empty"},yt("The document carries no meshes of the parts; the seam is shown alone.")));try{this.scene=new fh(t,this.atlas,this.walk)}catch{en(t),t.append(qt("p",{class:"empty"},yt("This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places.")));return}this.tools(this.scene),this.scene.aslant(!1),this.scene.flyToMarker(),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&Eh(e,this.walk)&&e.preventDefault()})}tools(t){let e=fe("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(fe("space-note").textContent=yt("{count} small faces are left out of this picture; all were measured.",{count:n}));let s=(o,a)=>{let l=qt("button",{type:"button"},o);return l.addEventListener("click",a),l},r=(o,a,l)=>{let c=qt("input",{type:"checkbox"});return c.checked=a,c.addEventListener("change",()=>l(c.checked)),qt("label",null,c,` ${o}`)};Lo(e,[this.larger(),s(yt("Along the beam"),()=>t.alongLight()),s(yt("Oblique"),()=>t.aslant()),s(yt("To the section"),()=>t.flyToMarker()),r(yt("cut open here"),!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&Lo(e,[r(yt("{count} further parts",{count:t.partIds.length-12}),!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}larger(){let t=fe("desk"),e=qt("button",{type:"button",id:"space-larger","aria-pressed":"false"},yt("Larger")),n=s=>{t.classList.toggle("large-space",s),e.setAttribute("aria-pressed",String(s)),e.textContent=s?yt("Smaller"):yt("Larger")};return e.addEventListener("click",()=>n(!t.classList.contains("large-space"))),fe("tab-plan")?.addEventListener("click",()=>n(!1)),e}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function E1(i,t){let e=fe("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(l=>Array.isArray(n.stations[l])).map(l=>{let c=n.stations[l][r.station],u=c===null?i.words.reason(s.id,n.id,l,o):"";return qt("tr",null,qt("th",{scope:"row"},i.words.title(l)),qt("td",{"data-column":l,"data-value":String(c)},i.words.value(c,l)),qt("td",null,u))});en(e),e.append(...a)}function T1(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function A1(i){return[...document.querySelectorAll("[data-sheet]")].flatMap((t,e)=>{let n=i.payload.findings.find(u=>String(u.n)===t.dataset.sheet);if(n.station===null)return[];let s=i.payload.joints.findIndex(u=>u.id===n.joint),r=i.payload.joints[s].contours.findIndex(u=>u.id===n.contour),o={joint:s,contour:r,station:n.station},a=(u,h)=>{en(t),t.append(Yd(i,o,u,h,`sheet${e}`,!0),qt("figcaption",null,Zd(i,o)))},l=()=>a(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),c=Do(t,l);return[{draw:c,forPrint:()=>{c(),a(450,330)},forScreen:l}]})}var I0=!1,L0=[];function D0(i){if(L0.push(i),I0)return;I0=!0;let t=document.documentElement,e=()=>{for(let n of L0)n()};fe("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}M1().catch(i=>{console.error(i);let t=fe("trouble");t&&(t.hidden=!1,t.textContent=yt("The figures could not be drawn: {error}. All texts and tables below are complete.",{error:i instanceof Error?i.message:String(i)}))});})();
